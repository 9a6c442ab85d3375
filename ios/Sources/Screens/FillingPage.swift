import Bridge
import Design
import Kit
import SwiftUI

public struct FillingPage: View {
    @Environment(\.say) private var say
    let state: FillingState
    let send: @MainActor @Sendable (FillingEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: FillingState, send: @escaping @MainActor @Sendable (FillingEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        Sheet(keysFromTop: state.open != nil) {
            Head(state.facts.name, tag: state.facts.code, onBack: { if state.open == nil { onBack() } else { send(.leave) } })
        } keys: {
            if let open = state.open {
                AskKeys(ask: open.ask, typed: state.typed, onType: { send(.type($0)) }, onAnswer: { send(.answer($0)) })
            } else {
                if state.facts.isPoint { PressKey(say("shell-past")) { send(.past) } }
                PressKey(state.sure ? say("shell-retire-sure") : say("shell-retire")) { send(.retire) }
            }
        } content: {
            Answer(refused: state.refused)
            Words(state.facts.note, .note)
            if state.open == nil {
                ForEach(state.facts.facts, id: \.column) { fact in
                    PressKey(fact.shown, note: fact.ask.asked) { send(.open(fact)) }
                }
            }
        }
    }
}
