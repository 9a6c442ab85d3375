public struct HorizontalAlignment: Equatable, Sendable {
    let name: String
    public static let leading = Self(name: "leading"), center = Self(name: "center"), trailing = Self(name: "trailing")
}

public struct VerticalAlignment: Equatable, Sendable {
    let name: String
    public static let top = Self(name: "top"), center = Self(name: "center"), bottom = Self(name: "bottom")
    public static let firstTextBaseline = Self(name: "firstTextBaseline")
}

public struct Alignment: Equatable, Sendable {
    let name: String
    public static let center = Self(name: "center"), leading = Self(name: "leading"), trailing = Self(name: "trailing")
    public static let top = Self(name: "top"), bottom = Self(name: "bottom")
    public static let topLeading = Self(name: "topLeading"), bottomLeading = Self(name: "bottomLeading")
}

public enum Axis: Sendable {
    case horizontal, vertical
    public struct Set: OptionSet, Sendable {
        public let rawValue: Int8
        public init(rawValue: Int8) { self.rawValue = rawValue }
        public static let horizontal = Set(rawValue: 1), vertical = Set(rawValue: 2)
    }
}

public struct UnitPoint: Hashable, Sendable {
    public var x, y: CGFloat
    public init(x: CGFloat, y: CGFloat) { (self.x, self.y) = (x, y) }
    public static let top = Self(x: 0.5, y: 0), bottom = Self(x: 0.5, y: 1), center = Self(x: 0.5, y: 0.5)
    public static let topLeading = Self(x: 0, y: 0), topTrailing = Self(x: 1, y: 0)
}

public struct HStack<Content: View>: View, Drawn {
    let content: Content
    public init(alignment: VerticalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content) { self.content = content() }
    func nodes(_ at: Surroundings) -> [Node] { [Node("row", children: built(content, at.below("row")))] }
}

public struct VStack<Content: View>: View, Drawn {
    let content: Content
    public init(alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content) { self.content = content() }
    func nodes(_ at: Surroundings) -> [Node] { [Node("column", children: built(content, at.below("column")))] }
}

public struct ZStack<Content: View>: View, Drawn {
    let content: Content
    public init(alignment: Alignment = .center, @ViewBuilder content: () -> Content) { self.content = content() }
    func nodes(_ at: Surroundings) -> [Node] { [Node("pile", children: built(content, at.below("pile")))] }
}

public struct ScrollView<Content: View>: View, Drawn {
    let content: Content
    public init(_ axes: Axis.Set = .vertical, @ViewBuilder content: () -> Content) { self.content = content() }
    func nodes(_ at: Surroundings) -> [Node] { [Node("scroll", children: built(content, at.below("scroll")))] }
}

/// Takes the first that fits; this double lays nothing out, so it takes the first.
public struct ViewThatFits<Content: View>: View, Drawn {
    let content: Content
    public init(in axes: Axis.Set = [.horizontal, .vertical], @ViewBuilder content: () -> Content) { self.content = content() }
    func nodes(_ at: Surroundings) -> [Node] { Array(built(content, at.below("fits")).prefix(1)) }
}

public struct Spacer: View, Drawn {
    public init(minLength: CGFloat? = nil) {}
    func nodes(_ at: Surroundings) -> [Node] { [Node("space")] }
}

public struct GeometryProxy {
    public let size: CGSize
}

public struct GeometryReader<Content: View>: View, Drawn {
    let content: (GeometryProxy) -> Content
    public init(@ViewBuilder content: @escaping (GeometryProxy) -> Content) { self.content = content }
    func nodes(_ at: Surroundings) -> [Node] { built(content(GeometryProxy(size: at.size)), at.below("room")) }
}
