import Bridge
import Design
import Kit
import SwiftUI

public struct SafePage: View {
    @Environment(\.say) private var say
    let state: SafeState
    let send: @MainActor @Sendable (SafeEvent) -> Void
    let onBack: @MainActor () -> Void

    public init(state: SafeState, send: @escaping @MainActor @Sendable (SafeEvent) -> Void, onBack: @escaping @MainActor () -> Void) {
        (self.state, self.send, self.onBack) = (state, send, onBack)
    }

    public var body: some View {
        Sheet {
            Head(say("shell-safe"), onBack: onBack)
        } keys: {
            if state.picked != nil {
                PressKey(say("shell-restore-now"), weight: .primary) { send(.restore) }
            } else {
                PressKey(say("shell-restore")) { send(.pick) }
                PressKey(say("shell-verify")) { send(.verify) }
                PressKey(say("shell-back-up"), weight: .primary) { send(.backUp) }
            }
        } content: {
            Answer(told: state.told)
            Answer(refused: state.refused)
            Words(say("shell-passphrase"), .body)
            TypedField(state.passphrase, label: say("shell-passphrase")) { send(.passphrase($0)) }
            PressKey(say("shell-tables")) { send(.tables) }
            Chosen(title: "shell-look", all: Look.allCases, now: state.look, key: { "shell-look-\($0.rawValue)" }) { send(.looks($0)) }
            Chosen(title: "shell-hand", all: Hand.allCases, now: state.hand, key: { "shell-hand-\($0.rawValue)" }) { send(.holds($0)) }
            Chosen(title: "shell-language", all: languages, now: state.language, key: { "shell-language-\($0.isEmpty ? "phone" : $0)" }) { send(.speaks($0)) }
            Offers(offers: state.offers, send: send)
        }
    }
}

/// One of a few, the one that is chosen reversed.
private struct Chosen<Choice: Hashable>: View {
    @Environment(\.say) private var say
    let title: String
    let all: [Choice]
    let now: Choice
    let key: (Choice) -> String
    let choose: @MainActor (Choice) -> Void

    var body: some View {
        Words(say(title), .heading)
        KeyRow {
            ForEach(all, id: \.self) { choice in
                PressKey(say(key(choice)), weight: choice == now ? .chosen : .plain, inset: 4) { choose(choice) }
            }
        }
    }
}

/// What can be allowed on this phone alone.
private struct Offers: View {
    @Environment(\.say) private var say
    let offers: [Offer]
    let send: @MainActor (SafeEvent) -> Void

    var body: some View {
        ForEach(offers, id: \.word) { offer in
            PressKey(say(offer.word), note: say(offer.note), weight: offer.allowed ? .chosen : .plain) { send(.take(offer)) }
        }
    }
}
