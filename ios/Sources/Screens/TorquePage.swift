import Bridge
import Design
import Kit
import SwiftUI

public struct TorquePage: View {
    @Environment(\.say) private var say
    let state: TorqueState
    let send: @MainActor @Sendable (TorqueEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: TorqueState, send: @escaping @MainActor @Sendable (TorqueEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        Sheet {
            Head(say("shell-torque"), onBack: onBack)
        } keys: {
            if let advice = state.advice {
                Cautions(advice.cautions)
                PressKey(say("shell-anew")) { send(.anew) }
            } else if state.open == nil {
                PressKey(say("shell-advise"), weight: .primary, least: 76) { send(.advise) }
            }
        } content: {
            Answer(refused: state.refused)
            if let advice = state.advice {
                Advice(advice: advice)
            } else if let open = state.open {
                Words(open.question, .heading)
                ForEach(open.options, id: \.code) { option in
                    PressKey(option.word) { send(.choose(column: open.column, code: option.code)) }
                }
            } else {
                Words(say("shell-label-number"), .heading)
                TypedField(state.number, label: say("shell-label-number")) { send(.number($0)) }
            }
        }
    }
}

private struct Advice: View {
    let advice: TorqueScreen

    var body: some View {
        let figure = advice.figure
        Words(advice.action.word, .title)
        Words(advice.heldBy, .body)
        Words([figure.number, figure.unit, figure.metric, figure.basis].filter { !$0.isEmpty }.joined(separator: ", "), .heading)
        Lines(advice.lines + advice.missing + advice.tools + advice.notes, .body)
    }
}
