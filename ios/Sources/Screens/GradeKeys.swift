import Bridge
import Design
import Kit
import SwiftUI

/// The four grades. The farther from the thumb, the farther the joint has gone: Held lies under it, Apart at the far corner;
/// all four are of one size, so that none is easier than the truth. A screen reader says them from Held on.
struct GradeKeys: View {
    @Environment(\.dynamicTypeSize) private var size
    @Environment(\.hand) private var hand
    let state: CardState
    let send: @MainActor (CardEvent) -> Void

    var body: some View {
        let placed = state.graded(large: size.isLarge, hand: hand)
        VStack(spacing: 12) {
            ForEach(Array(placed.rows.enumerated()), id: \.offset) { row in
                KeyRow(spacing: 12) {
                    ForEach(Array(row.element.enumerated()), id: \.offset) { place in
                        if let key = place.element { grade(key) } else { Spacer() }
                    }
                }
            }
            ForEach(placed.below, id: \.code) { key in PressKey(key.word, note: key.note) { send(.press(key)) } }
        }
        .accessibilityElement(children: .contain)
    }

    private func grade(_ key: Key) -> some View {
        let glyph = state.view.glyphs.first { $0.code == key.code }?.picture
        return PressKey(key.word, note: key.note, glyph: glyph, least: 100, inset: 8) { send(.press(key)) }
            .accessibilitySortPriority(Double(grades.count - (grades.firstIndex(of: key.code) ?? 0)))
    }
}
