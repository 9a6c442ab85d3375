import Bridge
import Observation

/// Keeping safe: a backup, one brought back, a check of the logbook, and how the app looks.
public struct SafeState {
    public var look: Look
    public var hand: Hand
    public var told: [String] = []
    public var refused = ""
    /// What seals a backup, and opens one.
    public var passphrase = ""
    /// A backup that was picked; what a restore of it would do is told beside.
    public var picked: String?
    /// The language that was chosen, by its code; empty for that of the phone.
    public var language = ""
    public var offers: [Offer] = []
}

public enum SafeEvent {
    case backUp
    case verify
    case tables
    case pick
    case restore
    case passphrase(String)
    case speaks(String)
    case take(Offer)
    case looks(Look)
    case holds(Hand)
}

@MainActor @Observable
public final class SafeModel {
    public private(set) var state: SafeState
    private let core: Core
    private let phone: Phone
    private let onLook: (Look) -> Void
    private let onHand: (Hand) -> Void

    public init(core: Core, phone: Phone, look: Look, hand: Hand, onLook: @escaping (Look) -> Void, onHand: @escaping (Hand) -> Void) {
        (self.core, self.phone, self.onLook, self.onHand) = (core, phone, onLook, onHand)
        state = SafeState(look: look, hand: hand, language: phone.kept(Kept.language) ?? "", offers: phone.offers())
    }

    public func send(_ event: SafeEvent) {
        switch event {
        case .backUp: tell { try self.backUp() }
        case .verify: tell { try self.core.verify().words }
        case .tables: tell { try self.tables() }
        case .pick: phone.pickBackup { [weak self] path in self?.picked(path) }
        case .restore: tell { try self.core.restore(self.state.picked ?? "", self.state.passphrase).words }
        case .passphrase(let text): (state.passphrase, state.refused) = (text, "")
        case .speaks(let language): speak(language)
        case .take(let offer): take(offer)
        case .looks(let look):
            state.look = look
            onLook(look)
        case .holds(let hand):
            state.hand = hand
            onHand(hand)
        }
    }

    private func picked(_ path: String) {
        tell(path) { try self.core.restorePlan(path, self.state.passphrase).words }
    }

    private func speak(_ language: String) {
        phone.keep(Kept.language, language)
        state.language = language
    }

    private func take(_ offer: Offer) {
        offer.press()
        state.offers = phone.offers()
    }

    private func backUp() throws -> [String] {
        let path = phone.backupPath()
        let words = try core.backUp(path, state.passphrase).words
        phone.handOver(path)
        return words
    }

    private func tables() throws -> [String] {
        let path = phone.tablesPath()
        let words = try core.tables(path).words
        phone.share(path)
        return words
    }

    private func tell(_ picked: String? = nil, _ work: () throws -> [String]) {
        do {
            let told = try work()
            (state.told, state.refused, state.picked) = (told, "", picked)
        } catch {
            (state.told, state.refused, state.picked) = ([], sentence(of: error), nil)
        }
    }
}
