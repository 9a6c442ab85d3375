import Bridge
import Observation

/// What can be put on paper and handed on: reports, labels, sheets of findings.
public struct PapersState {
    public var keys: [Key]
    public var told: [String] = []
    public var refused = ""
}

public enum PapersEvent {
    case press(Key)
}

@MainActor @Observable
public final class PapersModel {
    public private(set) var state: PapersState
    private let core: Core
    private let phone: Phone
    private let rig: String
    /// What is told where a paper was written.
    private let written: String

    public init(core: Core, phone: Phone, rig: String, written: String) throws {
        (self.core, self.phone, self.rig, self.written) = (core, phone, rig, written)
        state = PapersState(keys: try core.papers(rig))
    }

    public func send(_ event: PapersEvent) {
        switch event {
        case .press(let key): write(key)
        }
    }

    private func write(_ key: Key) {
        do {
            phone.share(try core.writePaper(rig, key.code, phone.country(), phone.outgoing()))
            (state.told, state.refused) = ([written], "")
        } catch {
            (state.told, state.refused) = ([], sentence(of: error))
        }
    }
}
