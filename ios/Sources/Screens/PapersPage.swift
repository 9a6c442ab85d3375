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
        Sheet {
            Head(say("shell-papers"), onBack: onBack)
        } keys: {
        } content: {
            Answer(told: state.told)
            Answer(refused: state.refused)
            ForEach(state.keys, id: \.code) { key in PressKey(key.word, note: key.note) { send(.press(key)) } }
        }
    }
}
