import Bridge
import Design
import Kit
import SwiftUI

public struct RigsPage: View {
    let state: RigsState
    let send: @MainActor @Sendable (RigsEvent) -> Void

    public init(state: RigsState, send: @escaping @MainActor @Sendable (RigsEvent) -> Void) { (self.state, self.send) = (state, send) }

    public var body: some View {
        if state.adding { NewRig(state: state, send: send) } else { RigList(state: state, send: send) }
    }
}

private struct RigList: View {
    @Environment(\.say) private var say
    let state: RigsState
    let send: @MainActor (RigsEvent) -> Void

    var body: some View {
        Sheet {
            Head(say("shell-rigs"), onBack: nil)
        } keys: {
            PressKey(say("shell-torque")) { send(.torque) }
            PressKey(say("shell-safe")) { send(.safe) }
            PressKey(say("shell-add-rig")) { send(.add) }
        } content: {
            ForEach(state.screen.rigs, id: \.id) { rig in
                PressKey(rig.name, note: "\(rig.what)\n\(rig.due)") { send(.open(rig.id)) }
            }
        }
    }
}

/// A rig from a layout close to one's own, or from nothing but its name.
private struct NewRig: View {
    @Environment(\.say) private var say
    let state: RigsState
    let send: @MainActor @Sendable (RigsEvent) -> Void

    var body: some View {
        let leave: @MainActor () -> Void = { send(.leave) }
        Sheet {
            Head(say("shell-add-rig"), onBack: state.screen.rigs.isEmpty ? nil : leave)
        } keys: {
            Answer(refused: state.refused)
        } content: {
            Words(state.screen.empty ?? "", .body)
            if state.screen.rigs.isEmpty { Words(say("shell-text-sample"), .title) }
            Words(say("shell-rig-name"), .heading)
            TypedField(state.name, label: say("shell-rig-name")) { send(.name($0)) }
            Words(say("shell-close-to"), .heading)
            ForEach(state.layouts, id: \.code) { layout in PressKey(layout.words) { send(.from(layout.code)) } }
        }
    }
}
