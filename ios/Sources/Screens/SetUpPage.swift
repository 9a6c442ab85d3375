import Bridge
import Design
import Kit
import SwiftUI

public struct SetUpPage: View {
    @Environment(\.say) private var say
    let state: SetUpState
    let send: @MainActor (SetUpEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: SetUpState, send: @escaping @MainActor (SetUpEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        Sheet {
            Head(say("shell-set-up"), onBack: onBack)
        } keys: {
            PressKey(say("set-up-bay")) { send(.newBay) }
            PressKey(say("shell-pins-done"), weight: .primary, least: 76, press: onBack)
        } content: {
            Answer(refused: state.refused)
            Words(state.screen.words, .body)
            ForEach(state.screen.sources, id: \.code) { source in
                Hairline()
                Source(options: state.screen.options, source: source) { send(.answer(source: source.code, presence: $0)) }
            }
        }
    }
}

/// A source with its three answers; the one that stands is reversed.
private struct Source: View {
    let options: [Named]
    let source: SourceAsk
    let answer: @MainActor (String) -> Void

    var body: some View {
        Words(source.name, .strong)
        Words(source.how, .note)
        KeyRow {
            ForEach(options, id: \.code) { option in
                PressKey(option.word, weight: option.code == source.presence.code ? .chosen : .plain, inset: 4) { answer(option.code) }
            }
        }
        .accessibilityElement(children: .contain)
        .accessibilityLabel(source.name)
    }
}
