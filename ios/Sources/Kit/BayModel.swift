import Bridge
import Observation

/// A bay: its photo with pins, its points in rows, and what stays untouched.
public struct BayState {
    public var view: BayView
    /// Whether what can be added and filled in is listed.
    public var more = false
    public var told: [String] = []
    public var refused = ""
}

public enum BayEvent {
    case goOn
    case photo
    case newer
    case pins
    case more
    case leave
    case add(Piece)
    case again(String)
    case facts(String)
}

@MainActor @Observable
public final class BayModel {
    public private(set) var state: BayState
    private let core: Core
    private let phone: Phone
    private let rig: String
    private let code: String
    private let width: Double
    private let go: (Place) -> Void

    public init(core: Core, phone: Phone, rig: String, code: String, width: Double, go: @escaping (Place) -> Void) throws {
        (self.core, self.phone, self.rig, self.code, self.width, self.go) = (core, phone, rig, code, width, go)
        state = BayState(view: try core.bay(rig, code, width))
    }

    public func send(_ event: BayEvent) {
        switch event {
        case .goOn: go(.walk(rig))
        case .photo: phone.photo(rig, code) { [weak self] told in self?.change { told } }
        case .newer: change { try self.core.photoShow(self.rig, self.code).sentences }
        case .pins: go(.pins(rig, code))
        case .more: (state.more, state.told, state.refused) = (true, [], "")
        case .leave: (state.more, state.told, state.refused) = (false, [], "")
        case .add(let piece): go(.adding(rig, piece, bay: code, back: .bay(rig, code)))
        case .again(let point): change { [try self.core.setUpCopy(self.rig, point).words] }
        case .facts(let of): go(.facts(rig, of, back: .bay(rig, code)))
        }
    }

    private func change(_ work: () throws -> [String]) {
        do {
            let told = try work()
            state = BayState(view: try core.bay(rig, code, width), more: state.more, told: told)
        } catch {
            (state.refused, state.told) = (sentence(of: error), [])
        }
    }
}
