import Bridge
import Design
import Kit
import SwiftUI

/// What a pressed key asks, one question at a time.
struct AskCard: View {
    let state: CardState
    let asking: Asking
    let ask: Ask
    let send: @MainActor (CardEvent) -> Void

    var body: some View {
        Sheet(keysFromTop: true) {
            CardHead(state: state, onBack: { send(.leave) })
        } keys: {
            let drawn = Dictionary(state.view.glyphs.map { ($0.code, $0.picture) }) { first, _ in first }
            AskKeys(ask: ask, typed: asking.typed, drawn: drawn, onType: { send(.type($0)) }, onAnswer: { send(.answer($0)) })
        } content: {
            Weighed(state: state)
            Words(state.view.card.title, .title)
            Words(asking.key.word, .strong)
            Answer(refused: state.refused)
        }
    }
}

/// One question and the keys that answer it: options, a number pad, or a field.
struct AskKeys: View {
    @Environment(\.say) private var say
    let ask: Ask
    let typed: String
    var drawn: [String: Picture] = [:]
    let onType: @MainActor @Sendable (String) -> Void
    let onAnswer: @MainActor @Sendable (String) -> Void

    var body: some View {
        Words(ask.asked, .heading).frame(maxWidth: .infinity, alignment: .leading)
        switch ask {
        case .choice(_, let options): Options(options: options, drawn: drawn, onAnswer: onAnswer)
        case .number(_, let unit): NumberPad(typed: typed, unit: unit, onType: onType)
        case .words(let question): TypedField(typed, label: question, onType: onType)
        }
        if ask.isTyped { PressKey(say("shell-enter"), weight: .primary, least: 76) { onAnswer(typed) } }
    }
}

/// The options of a choice: drawn ones two abreast, the smallest under the thumb.
private struct Options: View {
    let options: [Named]
    let drawn: [String: Picture]
    let onAnswer: @MainActor (String) -> Void

    var body: some View {
        if options.allSatisfy({ drawn[$0.code] != nil }) {
            ForEach(Array(pairs.enumerated()), id: \.offset) { pair in
                KeyRow(spacing: 12) {
                    ForEach(pair.element, id: \.code) { option in
                        PressKey(option.word, glyph: drawn[option.code], least: 104, inset: 8) { onAnswer(option.code) }
                    }
                }
            }
        } else {
            ForEach(options, id: \.code) { option in PressKey(option.word) { onAnswer(option.code) } }
        }
    }

    private var pairs: [[Named]] {
        let turned = Array(options.reversed())
        return stride(from: 0, to: turned.count, by: 2).map { Array(turned[$0..<min($0 + 2, turned.count)]) }
    }
}
