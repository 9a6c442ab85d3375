import Bridge
import Design
import Kit
import SwiftUI

public struct WhenPage: View {
    let state: WhenState
    let send: @MainActor @Sendable (WhenEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: WhenState, send: @escaping @MainActor @Sendable (WhenEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        if let asking = state.asking, let ask = asking.ask {
            Asks(
                asking: asking, ask: ask, refused: state.refused,
                onLeave: { send(.leave) }, onType: { send(.type($0)) }, onAnswer: { send(.answer($0)) })
        } else {
            Standing(state: state, send: send, onBack: onBack)
        }
    }
}

private struct Standing: View {
    @Environment(\.say) private var say
    let state: WhenState
    let send: @MainActor (WhenEvent) -> Void
    let onBack: @MainActor () -> Void

    var body: some View {
        let screen = state.screen
        Sheet(place: "when") {
            Head(say("shell-when"), onBack: onBack)
        } keys: {
            PressKey(say("shell-calendar"), weight: .primary, least: 76) { send(.calendar) }
        } content: {
            Answer(told: state.told)
            Answer(refused: state.refused)
            ForEach(Array(screen.due.items.enumerated()), id: \.offset) { item in Due(line: item.element).id(item.offset) }
            Words(screen.due.secondLook?.words ?? "", .body)
            Lines(screen.due.cautions, .note)
            Hairline()
            Lines(screen.rules.rules.map(\.words), .body)
            Words(screen.rules.empty ?? "", .body)
            Learned(learned: screen.learned)
            ForEach(screen.keys, id: \.code) { key in PressKey(key.word, note: key.note) { send(.press(key)) } }
        }
    }
}

/// One thing that is due: when and why, then each limit with its own day.
private struct Due: View {
    let line: DueLine

    var body: some View {
        VStack(alignment: .leading, spacing: 4) {
            Words(line.words, .strong)
            Lines(line.limits, .note)
            Words(line.putOff ?? "", .body)
        }
    }
}

/// What the past tells of each kind, and how it is reckoned.
private struct Learned: View {
    let learned: LearnedScreen

    var body: some View {
        Hairline()
        Lines(learned.kinds.map(\.words), .body)
        Lines([learned.neverTight, learned.first, learned.how, learned.condition].compactMap { $0 }, .note)
        Hairline()
    }
}
