import Bridge
import Observation

/// What is noted of a record, and the field that is being filled in.
public struct FillingState {
    public var facts: Facts
    public var open: Fact?
    public var typed = ""
    public var sure = false
    public var refused = ""
}

public enum FillingEvent {
    case open(Fact)
    case type(String)
    case answer(String)
    case leave
    case retire
    case past
}

@MainActor @Observable
public final class FillingModel {
    public private(set) var state: FillingState
    private let core: Core
    private let rig: String
    private let code: String
    private let onPast: () -> Void
    private let onGone: () -> Void

    public init(core: Core, rig: String, code: String, onPast: @escaping () -> Void, onGone: @escaping () -> Void) throws {
        (self.core, self.rig, self.code, self.onPast, self.onGone) = (core, rig, code, onPast, onGone)
        state = FillingState(facts: try core.facts(rig, code))
    }

    public func send(_ event: FillingEvent) {
        switch event {
        case .open(let fact): (state.open, state.typed, state.refused) = (fact, fact.ask.isTyped ? fact.value : "", "")
        case .type(let text): (state.typed, state.refused) = (text, "")
        case .answer(let text): fill(text)
        case .leave: (state.open, state.sure, state.refused) = (nil, false, "")
        case .past: onPast()
        case .retire: if state.sure { retire() } else { state.sure = true }
        }
    }

    private func fill(_ text: String) {
        guard let column = state.open?.column else { return }
        changing {
            _ = try self.core.change(self.rig, self.code, [Field(name: column, value: trimmed(text))])
            self.state = FillingState(facts: try self.core.facts(self.rig, self.code))
        }
    }

    private func retire() {
        changing {
            _ = try self.core.retire(self.rig, self.code)
            self.onGone()
        }
    }

    private func changing(_ work: () throws -> Void) {
        do { try work() } catch { state.refused = sentence(of: error) }
    }
}
