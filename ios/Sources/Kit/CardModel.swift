import Bridge
import Observation

/// What the card screen shows: the card as the core gives it, and what is being answered.
public struct CardState: Equatable {
    public var view: CardView
    /// The key that was pressed and still asks for something.
    public var asking: Asking?
    /// What was told of the last act.
    public var told: [String] = []
    /// Why the last act was refused.
    public var refused = ""
    /// Whether the acts that are seldom needed are listed.
    public var more = false
    /// What is typed on the card's own number pad.
    public var typed = ""
    /// What the reading that is typed would bring.
    public var weighed: WeighedView?
}

/// What a person does on the card screen.
public enum CardEvent {
    /// Presses a key of the card.
    case press(Key)
    /// Types on the number pad or in a field.
    case type(String)
    /// Answers what a key asks.
    case answer(String)
    /// Leaves a question, or the list of more acts.
    case leave
    /// Lists the acts that are seldom needed.
    case more
}

/// The open walk, card by card. A tap is durable before the next card shows: the core answers with the card that stands then.
@MainActor @Observable
public final class CardModel {
    public private(set) var state: CardState
    private let core: Core
    private let phone: Phone
    private let rig: String
    private let room: Room
    private let onEnd: () -> Void
    /// What is told where nothing needs to be: the next card says it.
    private let noted: String?

    public init(core: Core, phone: Phone, rig: String, room: Room, onEnd: @escaping () -> Void) throws {
        (self.core, self.phone, self.rig, self.room, self.onEnd) = (core, phone, rig, room, onEnd)
        noted = try core.text()["told-recorded"]
        state = CardState(view: try core.card(rig, room))
    }

    public func send(_ event: CardEvent) {
        switch event {
        case .press(let key): pressed(key)
        case .type(let text): type(text)
        case .answer(let text): answered(text)
        case .leave: (state.asking, state.more, state.refused) = (nil, false, "")
        case .more: (state.more, state.told, state.refused) = (true, [], "")
        }
    }

    /// Tells anew how long a wait still runs; nothing else of what is being done changes.
    public func tick() {
        guard state.view.card.waits, let view = try? core.card(rig, room) else { return }
        if view.card.seq == state.view.card.seq { state.view = view }
    }

    private func type(_ text: String) {
        if state.asking == nil { state.typed = text } else { state.asking?.typed = text }
        state.refused = ""
        state.weighed = weighed()
    }

    /// What the reading that is typed would bring; a reading is judged before it is entered.
    private func weighed() -> WeighedView? {
        let reading: (Key, [String])? = if let asking = state.asking {
            asking.ask?.isNumber == true ? (asking.key, asking.answers + [asking.typed]) : nil
        } else {
            state.padKey.map { ($0, [state.typed]) }
        }
        guard let (key, typed) = reading, typed.last?.isEmpty == false else { return nil }
        return try? core.weigh(rig, key.code, typed, room.width - 2 * margin)
    }

    private func pressed(_ key: Key) {
        if key.code == "photo" {
            photo()
        } else if key == state.padKey {
            record(key, [state.typed])
        } else if key.asks.isEmpty {
            record(key, [])
        } else {
            (state.asking, state.more, state.told, state.refused) = (Asking(key: key), false, [], "")
        }
    }

    /// A photo shows the point of the card, else its bay, else the rig.
    private func photo() {
        let card = state.view.card
        let name = try? core.rigs().rigs.first { $0.id == rig }?.name
        phone.photo(rig, card.point ?? card.tag ?? name ?? "") { [weak self] told in self?.entered(told) }
    }

    private func entered(_ told: [String]) {
        do { state = CardState(view: try core.card(rig, room), told: told) } catch { state.refused = sentence(of: error) }
    }

    private func answered(_ text: String) {
        guard let asking = state.asking?.answered(text) else { return }
        if asking.ask == nil { record(asking.key, asking.answers) } else { (state.asking, state.refused) = (asking, "") }
    }

    private func record(_ key: Key, _ typed: [String]) {
        let card = state.view.card
        let press = Press(act: card.act, seq: card.seq, point: card.point, key: key.code, typed: typed)
        do {
            let pressed = try core.press(rig, press, room)
            phone.feel(.of(key: key.code))
            guard let view = pressed.view else { return onEnd() }
            state = CardState(view: view, told: (pressed.told?.sentences ?? []).filter { $0 != noted })
        } catch {
            phone.feel(.refused)
            (state.refused, state.told, state.asking) = (sentence(of: error), [], state.asking?.anew())
        }
    }
}
