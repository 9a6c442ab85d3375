import Bridge
import Design
import Kit
import SwiftUI

public struct PinsPage: View {
    @Environment(\.say) private var say
    let state: PinsState
    let send: @MainActor (PinsEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: PinsState, send: @escaping @MainActor (PinsEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        let view = state.view
        Sheet {
            Head(view.name, tag: view.tag, onBack: onBack)
        } keys: {
            KeyRow {
                PressKey(say("shell-pin-before"), inset: 4) { send(.before) }
                if state.pinned { PressKey(say("shell-pin-out"), inset: 4) { send(.takeOut) } }
                PressKey(say("shell-pin-next"), inset: 4) { send(.next) }
            }
            PressKey(say("shell-pins-done"), weight: .primary, least: 76, press: onBack)
        } content: {
            Words(say("shell-pin-where"), .body)
            Words(state.point?.name ?? "", .title)
            Words(state.point?.place ?? "", .note)
            if let photo = view.photo {
                PinnedPhoto(path: photo.path, words: photo.words, pins: view.pins) { send(.place(across: $0, down: $1)) }
            }
            Answer(refused: state.refused)
        }
    }
}
