import Bridge
import Design
import Kit
import SwiftUI

public struct FindingsPage: View {
    let state: FindingsState
    let send: @MainActor @Sendable (FindingsEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: FindingsState, send: @escaping @MainActor @Sendable (FindingsEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        if let asking = state.asking, let ask = asking.ask {
            Asks(
                asking: asking, ask: ask, refused: state.refused,
                onLeave: { send(.leave) }, onType: { send(.type($0)) }, onAnswer: { send(.answer($0)) })
        } else {
            Waiting(state: state, send: send, onBack: onBack)
        }
    }
}

private struct Waiting: View {
    @Environment(\.say) private var say
    let state: FindingsState
    let send: @MainActor (FindingsEvent) -> Void
    let onBack: @MainActor () -> Void

    var body: some View {
        Sheet(place: "findings") {
            Head(say("shell-findings"), onBack: onBack)
        } keys: {
            PressKey(say("shell-papers"), weight: .primary, least: 76) { send(.papers) }
        } content: {
            Answer(told: state.told)
            Answer(refused: state.refused)
            Cautions(state.screen.cautions)
            ForEach(Array(state.screen.keys.enumerated()), id: \.offset) { key in
                PressKey(key.element.word, note: key.element.note) { send(.press(key.element)) }.id(key.offset)
            }
            ForEach(state.screen.findings.filter { !$0.open }, id: \.number) { line in Closed(line: line) }
        }
    }
}

/// What it was, and what was decided about it.
private struct Closed: View {
    let line: FindingLine

    var body: some View {
        VStack(alignment: .leading, spacing: 2) {
            Hairline()
            Words(line.words, .strong)
            Words(line.followUp, .body)
        }
    }
}
