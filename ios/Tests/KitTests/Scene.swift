import Bridge
import Foundation
import Testing
@testable import Kit

/// A logbook of its own with the sample rig, and a phone that remembers what it was asked.
@MainActor
final class Scene {
    let folder: String
    let clock: SteadyClock
    private(set) var book: Baywalk
    private(set) var core: Core
    let rig: String
    let phone = Remembered()

    init(language: String = "en", empty: Bool = false) throws {
        folder = FileManager.default.temporaryDirectory.appendingPathComponent("baywalk-\(UUID().uuidString)").path
        clock = try SteadyClock.begin()
        book = try Baywalk.openSteady(folder: folder, locales: [language], clock: clock)
        core = .live(book)
        rig = empty ? "" : try book.startFrom(layout: "sample-motorhome", name: "Wren")
    }

    /// The logbook opened anew, as after the process is gone.
    func again(language: String = "en") throws {
        try book.letGo()
        book = try Baywalk.openSteady(folder: folder, locales: [language], clock: clock)
        core = .live(book)
    }

    func away() throws {
        try book.letGo()
        try FileManager.default.removeItem(atPath: folder)
    }

    /// An app over this logbook.
    func app() -> AppModel { AppModel(core: core, phone: phone.phone) }

    /// The card of the walk that is open, or of one begun now.
    func card(onEnd: @escaping () -> Void = {}) throws -> CardModel {
        if try !core.rig(rig, 328).walking { _ = try core.start(rig, [], false) }
        return try CardModel(core: core, phone: phone.phone, rig: rig, room: Room(width: 360, scale: 1), onEnd: onEnd)
    }
}

/// A phone that remembers: what was kept, shared, handed over and felt.
@MainActor
final class Remembered {
    var kept: [String: String] = [:]
    var calendars: [String] = []
    var outgoing = NSTemporaryDirectory()
    var handedOver: [String] = []
    var felt: [Feel] = []
    var backup = ""
    var offered = 0
    /// What a photo that is asked for brings: told of its rig and place.
    var photo: (String, String) -> [String] = { _, _ in [] }

    var phone: Phone {
        Phone(
            kept: { self.kept[$0] }, keep: { self.kept[$0] = $1 }, backupPath: { self.backup },
            tablesPath: { self.outgoing + "/tables.zip" }, outgoing: { self.outgoing }, country: { "US" }, share: { self.handedOver.append($0) },
            shareCalendar: { self.calendars.append($0) }, handOver: { self.handedOver.append($0) },
            pickBackup: { $0(self.backup) }, photo: { rig, place, entered in entered(self.photo(rig, place)) },
            feel: { self.felt.append($0) },
            offers: { [Offer(word: "shell-cloud", note: "shell-cloud-note", allowed: self.offered > 0) { self.offered += 1 }] }
        )
    }
}

extension CardModel {
    func key(_ code: String) throws -> Key {
        try #require(state.view.card.keys.first { $0.code == code }, "no \(code) on \(state.view.card)")
    }

    /// Answers a card by its first key, as a person would who finds all in order.
    func answerFirst() throws { try press(try #require(state.view.card.keys.first)) }

    /// Presses a key and answers all that it asks, until the card is answered.
    func press(_ key: Key) throws {
        let card = state.view.card
        let number = reading(card)
        if state.asking == nil, key.asks.count == 1, key.asks[0].isNumber { send(.type(number)) }
        send(.press(key))
        while let ask = state.asking?.ask, state.refused.isEmpty {
            switch ask {
            case .words: send(.answer("outlet at the post"))
            case .number: send(.answer(number))
            case .choice(_, let options): send(.answer(try #require(options.last).code))
            }
        }
        try #require(state.refused == "", "\(card.kind), \(card.title)")
    }

    /// Goes on until a card of a kind is shown.
    func until(_ kind: String, fits: (CardModel) -> Bool = { _ in true }) throws {
        for _ in 0..<2000 {
            if state.view.card.kind == kind && fits(self) { return }
            try answerFirst()
        }
        Issue.record("no \(kind) was shown")
    }

    /// Goes on to a joint that is checked with a tool.
    func untilTorque() throws {
        try until("point") { $0.state.answers.contains { $0.code == "moved" && !$0.asks.isEmpty } }
    }
}

/// A reading that a healthy service shows.
func reading(_ card: Card) -> String {
    let about = card.title + card.question
    switch card.kind {
    case "known_live": return card.title.contains("AC") || card.title.contains("CA") ? "121" : "12.8"
    case "measure" where about.contains("L1") && about.contains("L2"): return "240.4"
    case "measure" where ["eutral to ground", "ody", "N to G", "eutro a tierra", "arrocer", "N a G"].contains { about.contains($0) }: return "0.4"
    case "measure" where ["DC", "attery", "CC", "ater"].contains { about.contains($0) }: return "12.9"
    case "measure" where about.contains("oad") || about.contains("arga"): return "117.5"
    case "measure": return "120.2"
    default: return "0.2"
    }
}

/// Says that something else was there than the test needs to go on.
func lost(_ what: String, at: SourceLocation = #_sourceLocation) {
    Issue.record(Comment(rawValue: what), sourceLocation: at)
}
