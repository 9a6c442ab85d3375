import Bridge
import Observation

/// What is shown: a screen by its model, or why none can be shown.
public enum Shown {
    case rigs(RigsModel)
    case rig(RigModel)
    case card(CardModel)
    case bay(BayModel)
    case result(ResultModel)
    case safe(SafeModel)
    case torque(TorqueModel)
    case pins(PinsModel)
    case setUp(SetUpModel)
    case plan(PlanModel)
    case whenNext(WhenModel)
    case findings(FindingsModel)
    case past(PastModel)
    case papers(PapersModel)
    case adding(AddingModel)
    case filling(FillingModel)
    case stuck(String)
}

/// The whole app. It comes back to where it was: a walk that is open is shown by its card.
@MainActor @Observable
public final class AppModel {
    public private(set) var place: Place
    public private(set) var shown: Shown
    public private(set) var look: Look
    public private(set) var hand: Hand
    public let core: Core
    public let phone: Phone
    private let said: [String: String]
    private var room = Room(width: 360, scale: 1)

    public init(core: Core, phone: Phone) {
        (self.core, self.phone) = (core, phone)
        said = (try? core.text()) ?? [:]
        look = phone.kept(Kept.look).flatMap(Look.init) ?? .day
        hand = phone.kept(Kept.hand).flatMap(Hand.init) ?? .right
        place = .rigs
        shown = .stuck("")
        do { go(to: try first()) } catch { shown = .stuck(sentence(of: error)) }
    }

    /// A word of the shell in the person's language.
    public func say(_ key: String) -> String { said[key] ?? key }

    /// Goes to a place.
    public func go(to place: Place) {
        self.place = place
        do { shown = try made(place) } catch { shown = .stuck(sentence(of: error)) }
    }

    /// Goes to where Back leads.
    public func back() { if let back = place.back { go(to: back) } }

    /// Opens a rig, as where its notice was pressed.
    public func open(rig: String) { go(to: .rig(rig)) }

    /// The room of the screen and the size of text, in which all that is drawn is drawn anew where they changed. What is
    /// being typed stands: a card is only read again.
    public func lay(width: Double, scale: Double) {
        let laid = Room(width: min(width, widest), scale: scale)
        guard laid != room, width > 0 else { return }
        room = laid
        switch shown {
        case .adding, .filling, .safe, .torque, .setUp, .rigs, .plan, .whenNext, .findings, .papers: break
        default: go(to: place)
        }
    }

    /// At which row a screen was left, none at its top. Where it can't be kept nothing is lost, so nobody is told.
    public func scrolled(_ place: String) -> Int? {
        guard let kept = try? core.scrolled(place), kept > 0 else { return nil }
        return Int(kept) - 1
    }

    /// Keeps at which row a screen is left.
    public func keepScrolled(_ place: String, _ row: Int?) {
        try? core.keepScrolled(place, row.map { UInt32(clamping: $0 + 1) } ?? 0)
    }

    /// The card of a walk that is open, else the only rig, else the list.
    private func first() throws -> Place {
        let rigs = try core.rigs().rigs
        if let walking = try rigs.first(where: { try core.rig($0.id, inner).walking }) { return .walk(walking.id) }
        if let only = rigs.first, rigs.count == 1 { return .rig(only.id) }
        return .rigs
    }

    /// The width within the margins.
    private var inner: Double { room.width - 2 * margin }

    private func made(_ place: Place) throws -> Shown {
        let go = { [unowned self] (to: Place) in self.go(to: to) }
        switch place {
        case .rigs: return .rigs(try RigsModel(core: core, go: go))
        case .rig(let rig): return .rig(try RigModel(core: core, rig: rig, width: inner, go: go))
        case .walk(let rig): return .card(try CardModel(core: core, phone: phone, rig: rig, room: room) { go(.result(rig)) })
        case .bay(let rig, let code):
            return .bay(try BayModel(core: core, phone: phone, rig: rig, code: code, width: room.width, go: go))
        case .result(let rig): return .result(try ResultModel(core: core, rig: rig, width: inner, go: go))
        case .safe: return .safe(safe())
        case .torque: return .torque(try TorqueModel(core: core))
        case .pins(let rig, let code): return .pins(try PinsModel(core: core, rig: rig, bay: code, width: room.width))
        case .setUp(let rig): return .setUp(try SetUpModel(core: core, rig: rig, go: go))
        case .plan(let rig): return .plan(PlanModel(core: core, rig: rig) { go(.walk(rig)) })
        case .whenNext(let rig): return .whenNext(try WhenModel(core: core, phone: phone, rig: rig))
        case .past(let rig, let code, _):
            return .past(try PastModel(core: core, rig: rig, code: code, width: inner) { go(.past(rig, $0, back: place)) })
        case .findings(let rig): return .findings(try FindingsModel(core: core, rig: rig, go: go))
        case .papers(let rig, _): return .papers(try PapersModel(core: core, phone: phone, rig: rig, written: say("shell-hand-on")))
        case .adding(let rig, let piece, let bay, _):
            return .adding(AddingModel(core: core, phone: phone, rig: rig, piece: piece, bay: bay))
        case .facts(let rig, let code, let back):
            return .filling(try FillingModel(core: core, rig: rig, code: code) { go(.past(rig, code, back: place)) } onGone: { go(back) })
        }
    }

    private func safe() -> SafeModel {
        SafeModel(core: core, phone: phone, look: look, hand: hand) { [unowned self] look in
            self.look = look
            self.phone.keep(Kept.look, look.rawValue)
        } onHand: { [unowned self] hand in
            self.hand = hand
            self.phone.keep(Kept.hand, hand.rawValue)
        }
    }
}
