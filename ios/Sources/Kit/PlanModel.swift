import Bridge
import Observation

/// What matters most within the minutes at hand: typed first, then shown with what is left out and why.
public struct PlanState {
    public var typed = ""
    public var screen: PlanScreen?
    public var open: String?
    public var refused = ""
}

public enum PlanEvent {
    case type(String)
    case make
    case anew
    case open(String)
    case follow
    case leave
}

@MainActor @Observable
public final class PlanModel {
    public private(set) var state: PlanState
    private let core: Core
    private let rig: String
    private let onWalk: () -> Void

    public init(core: Core, rig: String, onWalk: @escaping () -> Void) {
        (self.core, self.rig, self.onWalk) = (core, rig, onWalk)
        state = PlanState()
    }

    public func send(_ event: PlanEvent) {
        switch event {
        case .type(let text): (state.typed, state.refused) = (text, "")
        case .make: telling { self.state.screen = try self.core.plan(self.rig, self.minutes) }
        case .anew: (state.screen, state.typed, state.refused) = (nil, "", "")
        case .open(let code): state.open = code == state.open ? nil : code
        case .follow: telling { _ = try self.core.followPlan(self.rig, self.minutes); self.onWalk() }
        case .leave: telling {
            _ = try self.core.leavePlan(self.rig)
            self.state.screen = try self.core.plan(self.rig, self.minutes)
        }
        }
    }

    /// The minutes as typed, whole; none where there are more than the core can be handed.
    private var minutes: UInt16 { UInt16(state.typed.prefix { $0 != "." && $0 != "," }) ?? 0 }

    private func telling(_ work: () throws -> Void) {
        state.refused = ""
        do { try work() } catch { state.refused = sentence(of: error) }
    }
}
