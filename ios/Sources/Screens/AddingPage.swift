import Bridge
import Design
import Kit
import SwiftUI

public struct AddingPage: View {
    @Environment(\.say) private var say
    let state: AddingState
    let isPoint: Bool
    let send: @MainActor @Sendable (AddingEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: AddingState, isPoint: Bool, send: @escaping @MainActor @Sendable (AddingEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.isPoint, self.send, self.onBack) = (state, isPoint, send, onBack)
    }

    public var body: some View {
        Sheet(keysFromTop: state.ask != nil) {
            Head(state.form?.title ?? say("shell-set-up"), onBack: onBack)
        } keys: {
            if let ask = state.ask {
                AskKeys(ask: ask, typed: state.typed, onType: { send(.type($0)) }, onAnswer: { send(.answer($0)) })
            } else {
                done
            }
        } content: {
            Answer(refused: state.refused)
            Cautions(state.form?.cautions ?? [])
            Words(state.added?.words ?? "", .body)
        }
    }

    @ViewBuilder private var done: some View {
        if isPoint, let added = state.added {
            if added.walking { PressKey(say("shell-photo")) { send(.photo) } }
            PressKey(say("shell-again")) { send(.again) }
        }
        PressKey(say("shell-pins-done"), weight: .primary, least: 76, press: onBack)
    }
}
