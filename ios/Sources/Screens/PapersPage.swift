import Bridge
import Design
import Kit
import SwiftUI

public struct PapersPage: View {
    @Environment(\.say) private var say
    let state: PapersState
    let send: @MainActor (PapersEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: PapersState, send: @escaping @MainActor (PapersEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        Sheet(place: "papers") {
            Head(say("shell-papers"), onBack: onBack)
        } keys: {
        } content: {
            Answer(told: state.told)
            Answer(refused: state.refused)
            ForEach(Array(state.keys.enumerated()), id: \.offset) { key in
                PressKey(key.element.word, note: key.element.note) { send(.press(key.element)) }.id(key.offset)
            }
        }
    }
}
