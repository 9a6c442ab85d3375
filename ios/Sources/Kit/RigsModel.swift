import Bridge
import Observation

/// The rigs in the logbook, and a new one being set up.
public struct RigsState {
    public var screen: RigsScreen
    public var layouts: [LayoutLine]
    public var adding: Bool
    public var name = ""
    public var refused = ""
}

public enum RigsEvent {
    case open(String)
    case add
    case name(String)
    case from(String)
    case leave
    case torque
    case safe
}

@MainActor @Observable
public final class RigsModel {
    public private(set) var state: RigsState
    private let core: Core
    private let go: (Place) -> Void

    public init(core: Core, go: @escaping (Place) -> Void) throws {
        (self.core, self.go) = (core, go)
        state = try Self.read(core)
    }

    private static func read(_ core: Core) throws -> RigsState {
        let screen = try core.rigs()
        return RigsState(screen: screen, layouts: try core.layouts(), adding: screen.rigs.isEmpty)
    }

    public func send(_ event: RigsEvent) {
        switch event {
        case .open(let rig): go(.rig(rig))
        case .add: state.adding = true
        case .name(let text): (state.name, state.refused) = (text, "")
        case .from(let layout): start(layout)
        case .leave: telling { self.state = try Self.read(self.core) }
        case .torque: go(.torque(back: .rigs))
        case .safe: go(.safe(back: .rigs))
        }
    }

    private func start(_ layout: String) {
        telling {
            let rig = try self.core.startFrom(layout, trimmed(self.state.name))
            self.state = try Self.read(self.core)
            self.go(.setUp(rig))
        }
    }

    private func telling(_ work: () throws -> Void) {
        do { try work() } catch { state.refused = sentence(of: error) }
    }
}

/// A text without the blanks around it.
func trimmed(_ text: String) -> String {
    let blank = { (sign: Character) in sign.isWhitespace }
    return String(text.drop(while: blank).reversed().drop(while: blank).reversed())
}
