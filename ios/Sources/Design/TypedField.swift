import SwiftUI

/// A field for words; what is typed stands in a well.
public struct TypedField: View {
    @Environment(\.tokens) private var tokens
    @Environment(\.dynamicTypeSize) private var size
    let typed: String
    let label: String
    let onType: @MainActor @Sendable (String) -> Void

    public init(_ typed: String, label: String, onType: @escaping @MainActor @Sendable (String) -> Void) {
        (self.typed, self.label, self.onType) = (typed, label, onType)
    }

    public var body: some View {
        let (typed, onType) = (typed, onType)
        TextField(label, text: Binding(get: { typed }, set: { text in MainActor.assumeIsolated { onType(text) } }), axis: .vertical)
            .font(.system(size: TypeRole.body.height(at: size.scale), weight: .medium))
            .foregroundStyle(tokens.ink)
            .tint(tokens.mark)
            .autocorrectionDisabled()
            .padding(12)
            .frame(minHeight: 56)
            .background(tokens.well)
            .overlay { Rectangle().strokeBorder(tokens.ink, lineWidth: 2) }
            .accessibilityLabel(label)
    }
}
