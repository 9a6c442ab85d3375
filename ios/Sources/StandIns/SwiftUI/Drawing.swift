public protocol ShapeStyle: Sendable {}

public struct Color: ShapeStyle, Hashable {
    public let parts: [Double]
    public init(red: Double, green: Double, blue: Double) { parts = [red, green, blue] }
    public static let black = Color(red: 0, green: 0, blue: 0), clear = Color(red: 0, green: 0, blue: 0)
}

extension Color: View, Drawn {
    func nodes(_ at: Surroundings) -> [Node] { [Node("colour")] }
}

public struct Angle: Hashable, Sendable {
    public let degrees: Double
    public static func degrees(_ degrees: Double) -> Angle { Angle(degrees: degrees) }
}

public protocol Shape: View, Sendable {}
public protocol InsettableShape: Shape {}

extension Shape {
    public func stroke<S: ShapeStyle>(_ content: S, lineWidth: CGFloat = 1) -> some View { Shown(name: "stroke") }
    public func fill<S: ShapeStyle>(_ content: S) -> some View { Shown(name: "fill") }
}

extension InsettableShape {
    public func strokeBorder<S: ShapeStyle>(_ content: S, lineWidth: CGFloat = 1) -> some View { Shown(name: "border") }
}

struct Shown: View, Drawn {
    let name: String
    func nodes(_ at: Surroundings) -> [Node] { [] }
}

public struct Rectangle: InsettableShape, Drawn {
    nonisolated public init() {}
    func nodes(_ at: Surroundings) -> [Node] { [] }
}

public struct RoundedRectangle: InsettableShape, Drawn {
    nonisolated public init(cornerRadius: CGFloat) {}
    func nodes(_ at: Surroundings) -> [Node] { [] }
}

public struct Path: Equatable, Sendable {
    /// How many steps it has, for tests.
    public private(set) var steps = 0
    public init() {}
    public mutating func move(to end: CGPoint) { steps += 1 }
    public mutating func addLine(to end: CGPoint) { steps += 1 }
    public mutating func addRelativeArc(center: CGPoint, radius: CGFloat, startAngle: Angle, delta: Angle) { steps += 1 }
    public mutating func closeSubpath() { steps += 1 }
}

public enum CGLineCap: Sendable { case butt, round, square }
public enum CGLineJoin: Sendable { case miter, round, bevel }

public struct StrokeStyle: Equatable, Sendable {
    public init(lineWidth: CGFloat = 1, lineCap: CGLineCap = .butt, lineJoin: CGLineJoin = .miter, miterLimit: CGFloat = 10, dash: [CGFloat] = [], dashPhase: CGFloat = 0) {}
}

public struct GraphicsContext {
    public enum Shading { 
        case plain
        public static func color(_ color: Color) -> Shading { .plain }
    }
    public struct ResolvedText {
        let text: String
        public func measure(in size: CGSize) -> CGSize { CGSize(width: 8 * text.count, height: 16) }
        public func firstBaseline(in size: CGSize) -> CGFloat { 12 }
    }
    final class Told { var parts: [String] = [] }
    let told = Told()

    public mutating func scaleBy(x: CGFloat, y: CGFloat) {}
    public func fill(_ path: Path, with shading: Shading) { told.parts.append("fill \(path.steps)") }
    public func stroke(_ path: Path, with shading: Shading, style: StrokeStyle) { told.parts.append("stroke \(path.steps)") }
    public func resolve(_ text: Text) -> ResolvedText { ResolvedText(text: text.text) }
    public func draw(_ text: ResolvedText, at point: CGPoint, anchor: UnitPoint = .center) { told.parts.append(text.text) }
}

public struct Canvas: View, Drawn {
    let renderer: (inout GraphicsContext, CGSize) -> Void
    public init(renderer: @escaping (inout GraphicsContext, CGSize) -> Void) { self.renderer = renderer }

    func nodes(_ at: Surroundings) -> [Node] {
        var context = GraphicsContext()
        renderer(&context, at.size)
        var node = Node("drawing")
        node.note = "(\(context.told.parts.count) parts)"
        return [node]
    }
}
