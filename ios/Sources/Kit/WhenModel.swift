import Bridge
import Observation

/// When next: what is due and why, the rules, what the past tells, and what can be noted.
public struct WhenState {
    public var screen: WhenScreen
    public var asking: Asking?
    public var told: [String] = []
    public var refused = ""
}

public enum WhenEvent {
    case press(Key)
    case type(String)
    case answer(String)
    case leave
    case calendar
}

@MainActor @Observable
public final class WhenModel {
    public private(set) var state: WhenState
    private let core: Core
    private let phone: Phone
    private let rig: String

    public init(core: Core, phone: Phone, rig: String) throws {
        (self.core, self.phone, self.rig) = (core, phone, rig)
        state = WhenState(screen: try core.whenNext(rig))
    }

    public func send(_ event: WhenEvent) {
        switch event {
        case .press(let key): press(key)
        case .type(let text):
            state.asking?.typed = text
            state.refused = ""
        case .answer(let text): answered(text)
        case .leave: (state.asking, state.refused) = (nil, "")
        case .calendar:
            do { phone.shareCalendar(try core.calendar(rig)) } catch { state.refused = sentence(of: error) }
        }
    }

    private func press(_ key: Key) {
        if key.asks.isEmpty { take(key, []) } else { (state.asking, state.told, state.refused) = (Asking(key: key), [], "") }
    }

    private func answered(_ text: String) {
        guard let asking = state.asking?.answered(text) else { return }
        if asking.ask == nil { take(asking.key, asking.answers) } else { (state.asking, state.refused) = (asking, "") }
    }

    private func take(_ key: Key, _ answers: [String]) {
        do {
            let told = try core.whenPress(rig, key.code, answers).sentences
            state = WhenState(screen: try core.whenNext(rig), told: told)
        } catch {
            (state.asking, state.refused) = (state.asking?.anew(), sentence(of: error))
        }
    }
}
