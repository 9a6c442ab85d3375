import Bridge
import Design
import Kit
import SwiftUI

/// What a key asks, one question after another, in place of the screen that it stands on.
struct Asks: View {
    let asking: Asking
    let ask: Ask
    let refused: String
    let onLeave: @MainActor () -> Void
    let onType: @MainActor @Sendable (String) -> Void
    let onAnswer: @MainActor @Sendable (String) -> Void

    var body: some View {
        Sheet(keysFromTop: true) {
            Head(asking.key.word, onBack: onLeave)
        } keys: {
            AskKeys(ask: ask, typed: asking.typed, onType: onType, onAnswer: onAnswer)
        } content: {
            Answer(refused: refused)
            Words(asking.key.note, .body)
        }
    }
}
