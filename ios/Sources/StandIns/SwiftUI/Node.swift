/// A part of what was built, as a test reads it.
@MainActor public struct Node {
    public var kind: String
    public var text = ""
    /// What a screen reader says in the place of what stands below.
    public var label: String?
    public var value: String?
    public var traits: AccessibilityTraits = []
    public var hidden = false
    public var priority = 0.0
    /// The least that it measures, as far as it is told.
    public var least = CGSize.zero
    public var note = ""
    public var press: (@MainActor () -> Void)?
    public var type: (@MainActor (String) -> Void)?
    public var tap: (@MainActor (CGPoint) -> Void)?
    public var children: [Node] = []

    init(_ kind: String, text: String = "", children: [Node] = []) {
        (self.kind, self.text, self.children) = (kind, text, children)
    }

    /// This node and all below it, in order.
    public var all: [Node] { [self] + children.flatMap(\.all) }

    /// What a screen reader says of it.
    public var said: String {
        if hidden { return "" }
        if let label { return label }
        let below = children.map(\.said).filter { !$0.isEmpty }.joined(separator: ", ")
        return text.isEmpty ? below : text
    }

    /// All that can be pressed or typed into, in the order in which a screen reader comes to it.
    public var keys: [Node] { ranked(children.flatMap(\.elements)).filter { $0.press != nil || $0.type != nil } }

    /// What a screen reader stops at: in a container those of a higher priority first, wherever they lie in it.
    private var elements: [Node] {
        if hidden { return [] }
        if kind == "container" { return ranked(children.flatMap(\.elements)) }
        if press != nil || type != nil || label != nil || !text.isEmpty { return [self] }
        return children.flatMap(\.elements)
    }

    private func ranked(_ nodes: [Node]) -> [Node] {
        kind == "root" ? nodes : nodes.enumerated().sorted { ($0.element.priority, -$0.offset) > ($1.element.priority, -$1.offset) }.map(\.element)
    }

    /// The least size of it or of what fills it.
    public var leastSize: CGSize {
        children.map(\.leastSize).reduce(least) { CGSize(width: max($0.width, $1.width), height: max($0.height, $1.height)) }
    }

    /// The tree in lines, for a test that fails.
    public func drawn(_ depth: Int = 0) -> String {
        let marks = [label.map { "“\($0)”" }, value.map { "= \($0)" }, traits.isEmpty ? nil : "\(traits.names)", hidden ? "hidden" : nil,
                     priority == 0 ? nil : "priority \(priority)", least == .zero ? nil : "at least \(least.width) × \(least.height)"]
        let line = ([kind, text.isEmpty ? nil : "\"\(text)\"", note.isEmpty ? nil : note] + marks).compactMap { $0 }.joined(separator: " ")
        return String(repeating: "  ", count: depth) + line + "\n" + children.map { $0.drawn(depth + 1) }.joined()
    }
}

/// A view that is watched by a test: built anew whenever it is looked at.
@MainActor public final class Watched<V: View> {
    private let view: V
    private let memory = Memory()
    public var values = EnvironmentValues()
    public var size = CGSize(width: 360, height: 780)

    public init(_ view: V) { self.view = view }

    /// What stands there now.
    public var tree: Node {
        var root = Node("root")
        repeat {
            memory.changed = false
            root.children = built(view, Surroundings(values: values, size: size, memory: memory))
        } while memory.changed
        return root
    }
}
