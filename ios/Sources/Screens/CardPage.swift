import Bridge
import Design
import Kit
import SwiftUI

/// So many letters fit on one of two keys abreast.
private let short = 18

/// One card fills the screen: where, what holds it, the number, the question, the keys.
public struct CardPage: View {
    let state: CardState
    let send: @MainActor (CardEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: CardState, send: @escaping @MainActor (CardEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        if let asking = state.asking, let ask = asking.ask {
            AskCard(state: state, asking: asking, ask: ask, send: send)
        } else if state.more {
            MoreCard(state: state, send: send)
        } else {
            StandingCard(state: state, send: send, onBack: onBack)
        }
    }
}

private struct StandingCard: View {
    @Environment(\.dynamicTypeSize) private var size
    let state: CardState
    let send: @MainActor (CardEvent) -> Void
    let onBack: @MainActor () -> Void

    var body: some View {
        let more: @MainActor () -> Void = { send(.more) }
        Sheet {
            CardHead(state: state, onBack: onBack, onMore: size.isLarge ? nil : more)
        } keys: {
            Said(card: state.view.card, above: true)
            AnswerKeys(state: state, send: send)
            FootRow(state: state, send: send)
        } content: {
            Answer(told: state.told)
            Answer(refused: state.refused)
            Weighed(state: state)
            CardBody(state: state)
            Said(card: state.view.card, above: false)
        }
    }
}

/// What to mind, and the question that the keys answer: above the keys where there is room, else among the content.
private struct Said: View {
    @Environment(\.tall) private var tall
    let card: Card
    let above: Bool

    var body: some View {
        if tall == above {
            Cautions(card.cautions)
            Words(card.question, .heading).frame(maxWidth: .infinity, alignment: .leading)
        }
    }
}

/// Where the card stands. Large text leaves the head to the count; the name and the words of the line head the content.
struct CardHead: View {
    @Environment(\.dynamicTypeSize) private var size
    let state: CardState
    let onBack: @MainActor () -> Void
    var onMore: (@MainActor () -> Void)?

    var body: some View {
        let card = state.view.card
        let count = card.count.map { "\($0.at)/\($0.of)" } ?? ""
        VStack(alignment: .leading, spacing: 0) {
            Head(size.isLarge ? count : card.bay ?? card.title, tag: card.tag ?? "", onBack: onBack, onMore: onMore)
            Painted(state.view.line)
            if !size.isLarge {
                HStack(spacing: 8) {
                    Words(card.line.words, .note).frame(maxWidth: .infinity, alignment: .leading)
                    Words(count, .strong)
                }
                .padding(.horizontal, margin)
            }
        }
    }
}

/// What the card says, above its keys. On a low screen the number comes first: it must be in sight without scrolling.
private struct CardBody: View {
    @Environment(\.dynamicTypeSize) private var size
    @Environment(\.tall) private var tall
    let state: CardState

    var body: some View {
        let card = state.view.card
        if size.isLarge || card.title != card.bay { Words(card.title, .title) }
        if tall { Whereabouts(state: state) }
        if let figure = card.figure, let plate = state.view.plate { NumberPlate(figure, frame: plate) }
        if size.isLarge { Words(card.line.words, .note) }
        if !tall { Whereabouts(state: state) }
        Diagram(state: state)
        Lines(card.lines, .body)
    }
}

/// Where it is, in words and among the pins of its bay.
private struct Whereabouts: View {
    let state: CardState

    var body: some View {
        HStack(spacing: 12) {
            Words(state.view.card.place, .body).frame(maxWidth: .infinity, alignment: .leading)
            if let places = state.view.places { Painted(places) }
        }
    }
}

/// The sources and their bus, or the pairs of a proof; one pair alone is told by the title.
private struct Diagram: View {
    let state: CardState

    var body: some View {
        if let picture = state.view.diagram, state.view.pairs.count != 1 {
            Painted(picture, description: state.view.pairs.map { "\($0.pair) \($0.read)" }.joined(separator: ", "))
        }
    }
}

/// The keys that answer the card: grades in their four places, a number pad, or one under another.
private struct AnswerKeys: View {
    @Environment(\.dynamicTypeSize) private var size
    let state: CardState
    let send: @MainActor (CardEvent) -> Void

    var body: some View {
        if state.isGraded {
            GradeKeys(state: state, send: send)
        } else if let pad = state.padKey {
            PadKeys(state: state, key: pad, send: send)
        } else {
            ForEach(Array(rows.enumerated()), id: \.offset) { row in
                KeyRow(spacing: 12) {
                    ForEach(row.element, id: \.code) { key in PressKey(key.word, note: key.note) { send(.press(key)) } }
                }
            }
            if let first = state.answers.first {
                PressKey(first.word, note: first.note, weight: .primary, least: 76) { send(.press(first)) }
            }
        }
    }

    /// All but the first, the nearest to it the first of them; short ones two abreast.
    private var rows: [[Key]] {
        let others = Array(state.answers.dropFirst().reversed())
        let abreast = !size.isLarge && others.allSatisfy { $0.note.isEmpty && $0.word.count <= short } ? 2 : 1
        return stride(from: 0, to: others.count, by: abreast).map { Array(others[$0..<min($0 + abreast, others.count)]) }
    }
}

/// Undo, damage, photo and skip; mirrored for the left hand. Large text leaves undo and the way to the rest.
private struct FootRow: View {
    @Environment(\.dynamicTypeSize) private var size
    @Environment(\.hand) private var hand
    @Environment(\.say) private var say
    let state: CardState
    let send: @MainActor (CardEvent) -> Void

    var body: some View {
        let keys = footOf(large: size.isLarge).compactMap { code in state.view.card.keys.first { $0.code == code } }
        KeyRow {
            if size.isLarge && hand == .left { more }
            ForEach(hand == .left ? keys.reversed() : keys, id: \.code) { key in
                PressKey(key.word, inset: 4) { send(.press(key)) }
            }
            if size.isLarge && hand == .right { more }
        }
    }

    private var more: some View { PressKey(say("shell-more"), inset: 4) { send(.more) } }
}

/// The acts that are seldom needed, one under another.
private struct MoreCard: View {
    @Environment(\.dynamicTypeSize) private var size
    @Environment(\.say) private var say
    let state: CardState
    let send: @MainActor (CardEvent) -> Void

    var body: some View {
        let foot = footOf(large: size.isLarge)
        Sheet {
            CardHead(state: state, onBack: { send(.leave) })
        } keys: {
            ForEach(state.view.card.keys.filter { always.contains($0.code) && !foot.contains($0.code) }, id: \.code) { key in
                PressKey(key.word, note: key.note) { send(.press(key)) }
            }
            PressKey(say("shell-back-to-card"), weight: .primary, least: 76) { send(.leave) }
        } content: {
            Words(state.view.card.title, .title)
        }
    }
}
