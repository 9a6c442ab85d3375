import UIKit

public struct Text: Sendable {
    let text: String
    private(set) var font: Font?

    @_disfavoredOverload public init<S: StringProtocol>(_ content: S) { text = String(content) }
    public init(verbatim content: String) { text = content }

    public func font(_ font: Font?) -> Text { self }
    public func monospacedDigit() -> Text { self }
    public func tracking(_ tracking: CGFloat) -> Text { self }
    public func foregroundStyle<S: ShapeStyle>(_ style: S) -> Text { self }

}

extension Text: View, Drawn {
    func nodes(_ at: Surroundings) -> [Node] { [Node("text", text: text)] }
}

public struct Font: Hashable, Sendable {
    public struct Weight: Hashable, Sendable {
        let value: Double
        public static let regular = Weight(value: 400), medium = Weight(value: 500)
        public static let semibold = Weight(value: 600), bold = Weight(value: 700)
    }
    public enum Design: Hashable, Sendable { case `default`, monospaced }
    let size: CGFloat

    public static func system(size: CGFloat, weight: Weight? = nil, design: Design? = nil) -> Font { Font(size: size) }
}

public struct Image: Sendable {
    let size: CGSize
    public init(uiImage: UIImage) { size = uiImage.size }
    public func resizable() -> Image { self }
}

extension Image: View, Drawn {
    func nodes(_ at: Surroundings) -> [Node] { [Node("image")] }
}

public struct ButtonRole: Equatable, Sendable {
    public static let destructive = ButtonRole(), cancel = ButtonRole()
}

public struct Button<Label: View>: View, Drawn {
    let action: @MainActor () -> Void
    let label: Label
    public init(action: @escaping @MainActor () -> Void, @ViewBuilder label: () -> Label) { (self.action, self.label) = (action, label()) }

    func nodes(_ at: Surroundings) -> [Node] {
        let styled = at.style?(AnyView(label), false) ?? AnyView(label)
        var node = Node("button", children: built(styled, at.below("button")))
        node.traits = .isButton
        node.press = action
        return [node]
    }
}

@MainActor @preconcurrency public protocol ButtonStyle {
    associatedtype Body: View
    @ViewBuilder @MainActor func makeBody(configuration: Configuration) -> Body
    typealias Configuration = ButtonStyleConfiguration
}

public struct ButtonStyleConfiguration {
    public let label: AnyView
    public let isPressed: Bool
}

extension View {
    public func buttonStyle<S: ButtonStyle>(_ style: S) -> some View {
        Changed(self) { view, at in
            var at = at
            at.style = { AnyView(style.makeBody(configuration: .init(label: $0, isPressed: $1))) }
            return view(at)
        }
    }
}

public struct TextField<Label: View>: View, Drawn {
    let text: Binding<String>
    func nodes(_ at: Surroundings) -> [Node] {
        var node = Node("field", text: text.wrappedValue)
        let text = text
        node.type = { text.wrappedValue = $0 }
        return [node]
    }
}

extension TextField where Label == Text {
    @_disfavoredOverload public init<S: StringProtocol>(_ title: S, text: Binding<String>, axis: Axis) { self.text = text }
}

// Names that Apple's module has too: what is ambiguous there is ambiguous here.
public struct Label<Title: View, Icon: View>: View { public var body: Never { fatalError() } }
public struct Anchor<Value> {}
public struct Section<Content: View>: View { public var body: Never { fatalError() } }
