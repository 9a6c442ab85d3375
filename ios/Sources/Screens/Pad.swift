import Bridge
import Design
import Kit
import SwiftUI

/// The number pad of a card that is answered by one reading, with the reading large above it.
struct PadKeys: View {
    let state: CardState
    let key: Key
    let send: @MainActor (CardEvent) -> Void

    var body: some View {
        if case .number(_, let unit)? = key.asks.first {
            NumberPad(typed: state.typed, unit: unit) { send(.type($0)) }
        }
        ForEach(state.answers.filter { $0 != key }, id: \.code) { other in
            PressKey(other.word, note: other.note) { send(.press(other)) }
        }
        PressKey(key.word, weight: .primary, least: 76) { send(.press(key)) }
    }
}

/// The judgement of the reading as it is typed, with the place of the neutral where both lines are read.
struct Weighed: View {
    let state: CardState

    var body: some View {
        if let weighed = state.weighed {
            Answer(weighed.sentences, refused: weighed.refused)
            if let drift = weighed.drift { Painted(drift) }
        }
    }
}

/// A pad for a number of a unit, workable with gloves: no key is less than 56 by 76 points, and 0 lies under the thumb.
struct NumberPad: View {
    @Environment(\.hand) private var hand
    @Environment(\.say) private var say
    let typed: String
    let unit: String
    let onType: @MainActor (String) -> Void

    var body: some View {
        VStack(spacing: 8) {
            HStack(alignment: .firstTextBaseline, spacing: 8) {
                Words(typed.isEmpty ? "–" : typed, .name)
                Words(unit, .title)
            }
            .frame(maxWidth: .infinity, alignment: .leading)
            .accessibilityElement(children: .ignore)
            .accessibilityLabel("\(typed) \(unit)")
            ForEach(Array(rows.enumerated()), id: \.offset) { row in
                KeyRow {
                    ForEach(hand == .left ? row.element.reversed() : row.element, id: \.self) { sign in
                        PressKey(sign == erase ? say("shell-erase") : sign, inset: 2) { onType(after(typed, sign)) }
                    }
                }
            }
        }
    }

    private var rows: [[String]] {
        [["1", "2", "3", erase], ["4", "5", "6", say("shell-separator")], ["7", "8", "9", "0"]]
    }
}
