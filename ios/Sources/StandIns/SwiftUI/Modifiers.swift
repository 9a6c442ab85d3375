/// A view with something changed of it or around it.
struct Changed<Content: View>: View, Drawn {
    let content: Content
    let change: @MainActor ((Surroundings) -> [Node], Surroundings) -> [Node]

    init(_ content: Content, change: @escaping @MainActor ((Surroundings) -> [Node], Surroundings) -> [Node]) {
        (self.content, self.change) = (content, change)
    }

    func nodes(_ at: Surroundings) -> [Node] { change({ built(content, $0) }, at) }
}

extension View {
    /// One node over all that the view builds, with something noted on it.
    func noted(_ kind: String, _ note: @escaping @MainActor (inout Node) -> Void) -> some View {
        Changed(self) { view, at in
            let below = view(at)
            var node = below.count == 1 ? below[0] : Node(kind, children: below)
            note(&node)
            return [node]
        }
    }

    func same() -> some View { Changed(self) { view, at in view(at) } }

    // How it looks and lies: told to Apple's SwiftUI, of no weight here.
    public func font(_ font: Font?) -> some View { same() }
    public func foregroundStyle<S: ShapeStyle>(_ style: S) -> some View { same() }
    public func background<S: ShapeStyle>(_ style: S) -> some View { same() }
    public func background<S: ShapeStyle, T: InsettableShape>(_ style: S, in shape: T) -> some View { same() }
    public func overlay<V: View>(alignment: Alignment = .center, @ViewBuilder content: () -> V) -> some View {
        let over = content()
        return Changed(self) { view, at in view(at) + built(over, at.below("over")) }
    }
    public func padding(_ length: CGFloat) -> some View { same() }
    public func padding(_ edges: Edge.Set = .all, _ length: CGFloat? = nil) -> some View { same() }
    public func layoutPriority(_ value: Double) -> some View { same() }
    public func fixedSize(horizontal: Bool, vertical: Bool) -> some View { same() }
    public func multilineTextAlignment(_ alignment: TextAlignment) -> some View { same() }
    public func lineLimit(_ number: Int?) -> some View { same() }
    public func minimumScaleFactor(_ factor: CGFloat) -> some View { same() }
    public func colorMultiply(_ color: Color) -> some View { same() }
    public func position(x: CGFloat = 0, y: CGFloat = 0) -> some View { same() }
    public func contentShape<S: Shape>(_ shape: S) -> some View { same() }
    public func defaultScrollAnchor(_ anchor: UnitPoint?) -> some View { same() }
    public func scrollTargetLayout(isEnabled: Bool = true) -> some View { same() }
    public func tint(_ tint: Color?) -> some View { same() }
    public func preferredColorScheme(_ scheme: ColorScheme?) -> some View { same() }
    public func autocorrectionDisabled(_ disable: Bool = true) -> some View { same() }
    public func id<ID: Hashable>(_ id: ID) -> some View { same() }
    public func task(priority: TaskPriority = .userInitiated, _ action: @escaping @Sendable @MainActor () async -> Void) -> some View { same() }
    public func task<T: Equatable>(id value: T, priority: TaskPriority = .userInitiated, _ action: @escaping @Sendable @MainActor () async -> Void) -> some View { same() }

    /// Where a list stands. A test reads it off the tree and sets it as a finger would.
    public func scrollPosition(id: Binding<(some Hashable)?>, anchor: UnitPoint? = nil) -> some View {
        noted("scroll") { $0.value = id.wrappedValue.map { "\($0)" } }
    }

    public func frame(width: CGFloat? = nil, height: CGFloat? = nil, alignment: Alignment = .center) -> some View {
        noted("frame") { $0.least = CGSize(width: max($0.least.width, width ?? 0), height: max($0.least.height, height ?? 0)) }
    }

    public func frame(minWidth: CGFloat? = nil, idealWidth: CGFloat? = nil, maxWidth: CGFloat? = nil, minHeight: CGFloat? = nil, idealHeight: CGFloat? = nil, maxHeight: CGFloat? = nil, alignment: Alignment = .center) -> some View {
        noted("frame") { $0.least = CGSize(width: max($0.least.width, minWidth ?? 0), height: max($0.least.height, minHeight ?? 0)) }
    }

    public func environment<V>(_ path: WritableKeyPath<EnvironmentValues, V>, _ value: V) -> some View {
        Changed(self) { view, at in
            var at = at
            at.values[keyPath: path] = value
            return view(at)
        }
    }

    public func onChange<V: Equatable>(of value: V, initial: Bool = false, _ action: @escaping @MainActor (V, V) -> Void) -> some View {
        Changed(self) { view, at in
            let (key, known) = (at.path + "~", at.memory.values[at.path + "~"] as? V)
            at.memory.values[key] = value
            if known.map({ $0 != value }) ?? initial {
                action(known ?? value, value)
                at.memory.changed = true
            }
            return view(at)
        }
    }

    public func onTapGesture(count: Int = 1, coordinateSpace: some CoordinateSpaceProtocol = .local, perform action: @escaping @MainActor (CGPoint) -> Void) -> some View {
        noted("tapped") { $0.tap = action }
    }
}

public protocol CoordinateSpaceProtocol {}
public struct LocalCoordinateSpace: CoordinateSpaceProtocol {}
extension CoordinateSpaceProtocol where Self == LocalCoordinateSpace {
    public static var local: LocalCoordinateSpace { LocalCoordinateSpace() }
}

public enum ColorScheme: Sendable { case light, dark }
public enum TextAlignment: Hashable, Sendable { case leading, center, trailing }

public enum Edge: Sendable {
    case top, leading, bottom, trailing
    public struct Set: OptionSet, Sendable {
        public let rawValue: Int8
        public init(rawValue: Int8) { self.rawValue = rawValue }
        public static let top = Set(rawValue: 1), leading = Set(rawValue: 2), bottom = Set(rawValue: 4), trailing = Set(rawValue: 8)
        public static let horizontal: Set = [.leading, .trailing], vertical: Set = [.top, .bottom], all: Set = [.horizontal, .vertical]
    }
}
