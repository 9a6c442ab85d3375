import Bridge
import Observation

/// The photo of a bay while pins are put on it, one point after another.
public struct PinsState {
    public var view: BayView
    public var at: Int
    public var refused = ""

    /// The point whose pin is put next.
    public var point: PointRow? { view.points.indices.contains(at) ? view.points[at] : nil }

    /// Whether that point has a pin already.
    public var pinned: Bool { view.pins.contains { $0.pin.code == point?.code } }
}

public enum PinsEvent {
    case place(across: Int, down: Int)
    case takeOut
    case next
    case before
}

@MainActor @Observable
public final class PinsModel {
    public private(set) var state: PinsState
    private let core: Core
    private let rig: String
    private let bay: String
    private let width: Double

    public init(core: Core, rig: String, bay: String, width: Double) throws {
        (self.core, self.rig, self.bay, self.width) = (core, rig, bay, width)
        let view = try core.bay(rig, bay, width)
        let open = view.points.firstIndex { point in !view.pins.contains { $0.pin.code == point.code } }
        state = PinsState(view: view, at: open ?? 0)
    }

    public func send(_ event: PinsEvent) {
        switch event {
        case .place(let across, let down): pin(PinPlace(across: UInt16(clamping: across), down: UInt16(clamping: down)), step: 1)
        case .takeOut: pin(nil, step: 0)
        case .next: (state.at, state.refused) = (moved(1), "")
        case .before: (state.at, state.refused) = (moved(-1), "")
        }
    }

    private func moved(_ step: Int) -> Int { min(max(state.at + step, 0), max(state.view.points.count - 1, 0)) }

    private func pin(_ at: PinPlace?, step: Int) {
        guard let point = state.point else { return }
        do {
            _ = try core.pin(rig, point.code, at)
            state = PinsState(view: try core.bay(rig, bay, width), at: moved(step))
        } catch {
            state.refused = sentence(of: error)
        }
    }
}
