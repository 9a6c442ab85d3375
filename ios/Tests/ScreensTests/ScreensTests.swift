import Bridge
import Foundation
import SwiftUI
import Testing
@testable import Design
@testable import Kit
@testable import Screens

/// The screens as they are built, seen and pressed through the double.
@MainActor @Suite struct ScreensTests {
    private let standing = "standing"

    /// All that a card says stands on its screen: a caution that is not shown warns nobody.
    private func isWhole(_ tree: Node, _ view: Bridge.CardView) {
        let (card, text) = (view.card, Set(tree.all.filter { !$0.hidden }.map(\.text)))
        let figure = card.figure.map { [$0.number, $0.unit, $0.metric, $0.basis] } ?? []
        let said = [card.line.words, card.place, card.question] + card.lines + card.cautions + figure
        for words in said where !words.isEmpty { #expect(text.contains(words), "\(words) is not in\n\(tree.drawn())") }
        #expect(text.contains(card.title) || card.title == card.bay)
        let keys = tree.keys.map(\.said)
        for key in card.keys where !always.contains(key.code) {
            #expect(keys.contains { $0.hasPrefix(key.word) }, "\(key.word) is not among \(keys)")
        }
    }

    /// Every screen in every state that a walk comes by, in a light, a size of text and a hand.
    private func eachScreen(_ scene: Scene, size: DynamicTypeSize, look: (Node, String) throws -> Void) throws {
        let app = scene.app()
        let fingers = Fingers(app, size: size)
        let bay = try #require(scene.core.rig(scene.rig, 328).screen.bays.first).code
        let around: [Place] = [
            .rigs, .rig(scene.rig), .bay(scene.rig, bay), .safe(back: .rigs), .torque(back: .rigs), .setUp(scene.rig), .plan(scene.rig), .whenNext(scene.rig),
            .past(scene.rig, nil, back: .rig(scene.rig)), .findings(scene.rig), .papers(scene.rig, back: .rig(scene.rig)),
            .adding(scene.rig, .bay, bay: "", back: .setUp(scene.rig)), .adding(scene.rig, .device, bay: bay, back: .setUp(scene.rig)),
            .facts(scene.rig, bay, back: .bay(scene.rig, bay)), .pins(scene.rig, bay),
        ]
        for place in around {
            app.go(to: place)
            try look(fingers.tree, "\(place)")
        }
        _ = try scene.core.start(scene.rig, [], false)
        app.go(to: .bay(scene.rig, bay))
        try look(fingers.tree, "the bay in a walk")
        app.go(to: .walk(scene.rig))
        var seen: Set<String> = []
        for _ in 0..<2000 {
            guard case .card(let card) = app.shown else { break }
            let kind = [card.state.view.card.kind, card.state.view.card.keys.first?.code ?? "", card.state.view.card.figure?.frame ?? ""].joined(separator: " ")
            if seen.insert(kind).inserted { try eachState(card) { state in
                let tree = fingers.tree
                if state == standing { isWhole(tree, card.state.view) }
                try look(tree, "\(kind), \(state)")
            } }
            try card.answerFirst()
        }
        #expect(seen.count > 12, "\(seen)")
        #expect(app.place == .result(scene.rig))
        try look(fingers.tree, "the result")
    }

    /// The card itself, its further acts, and each question that one of its keys asks.
    private func eachState(_ card: CardModel, look: (String) throws -> Void) throws {
        try look(standing)
        card.send(.more)
        try look("more")
        card.send(.leave)
        for key in card.state.view.card.keys where !key.asks.isEmpty && key != card.state.padKey {
            card.send(.press(key))
            try look("asking for \(key.code)")
            card.send(.leave)
        }
    }

    @Test(arguments: [(DynamicTypeSize.large, "en"), (.accessibility5, "en"), (.accessibility3, "es")])
    func everyKeyHasWordsAndRoom(size: DynamicTypeSize, language: String) throws {
        let scene = try Scene(language: language)
        var keys = 0
        try eachScreen(scene, size: size) { tree, place in
            #expect(!tree.keys.isEmpty, "nothing can be pressed: \(place)\n\(tree.drawn())")
            for key in tree.keys {
                keys += 1
                #expect(!key.said.trimmingCharacters(in: .whitespacesAndNewlines).isEmpty, "a key without words, \(place):\n\(key.drawn())")
                #expect(!key.said.contains("shell-") && !key.said.contains("set-up-"), "\(key.said), \(place)")
                #expect(key.type != nil || key.traits.contains(.isButton), "no button: \(key.said)")
                #expect(key.leastSize.height >= 56, "\(key.leastSize.height) high: \(key.said), \(place)\n\(key.drawn())")
            }
            let names = tree.all.filter { $0.traits.contains(.isHeader) }
            #expect(!names.isEmpty, "no heading: \(place)\n\(tree.drawn())")
            for picture in tree.all where picture.kind == "drawing" {
                #expect(picture.hidden || picture.label?.isEmpty == false, "a picture without words, \(place)")
            }
        }
        #expect(keys > 300)
        try scene.away()
    }

    @Test func aWholeWalkIsPressedKeyByKey() throws {
        let scene = try Scene()
        let fingers = Fingers(scene.app())
        try fingers.press(scene.core.text()["shell-begin"] ?? "")
        var presses = 0
        while case .card(let card) = fingers.app.shown, presses < 3000 {
            try answer(fingers, card)
            presses += 1
        }
        #expect(fingers.app.place == .result(scene.rig))
        #expect(presses > 100)
        #expect(try scene.core.verify().whole)
        try fingers.press(scene.core.text()["shell-papers"] ?? "")
        try fingers.press(try #require(scene.core.papers(scene.rig).first).word)
        #expect(scene.phone.handedOver.count == 1)
        try FileManager.default.removeItem(atPath: scene.phone.handedOver[0])
        try scene.away()
    }

    /// Answers a card with its first key by pressing what stands on the screen, sign by sign where a number is asked.
    private func answer(_ fingers: Fingers, _ card: CardModel) throws {
        let shown = card.state.view.card
        let key = try #require(shown.keys.first)
        let typed = reading(shown)
        if card.state.padKey != nil { for sign in typed { try fingers.press(String(sign)) } }
        try fingers.press(key.word)
        while let ask = card.state.asking?.ask {
            switch ask {
            case .words:
                try fingers.type("outlet at the post")
                try fingers.press("Enter")
            case .number:
                for sign in typed { try fingers.press(String(sign)) }
                try fingers.press("Enter")
            case .choice(_, let options): try fingers.press(try #require(options.last).word)
            }
            try #require(card.state.refused == "", "\(shown.kind), \(shown.title)")
        }
        try #require(card.state.refused == "", "\(shown.kind), \(shown.title)")
    }

    @Test func aRefusalIsShownAndSaid() throws {
        let scene = try Scene()
        let card = try scene.card()
        try card.until("read")
        let fingers = Fingers(scene.app())
        AccessibilityNotification.posted = []
        try fingers.press(try #require(card.state.answers.first).word)
        guard case .card(let shown) = fingers.app.shown else { return lost("\(fingers.app.place)") }
        #expect(!shown.state.refused.isEmpty)
        #expect(fingers.text.contains(shown.state.refused), "\(fingers.tree.drawn())")
        #expect(AccessibilityNotification.posted.contains(shown.state.refused))
        try scene.away()
    }

    @Test(arguments: [Hand.right, .left])
    func theGradesLieByTheThumbAndAreSaidInOneOrder(hand: Hand) throws {
        let scene = try Scene()
        scene.phone.kept[Kept.hand] = hand.rawValue
        try scene.card().untilTorque()
        let tree = Fingers(scene.app()).tree
        let words = ["Held", "Moved", "Loose", "Apart"]
        let said = tree.keys.map(\.said).compactMap { said in words.first { said.hasPrefix($0) } }
        #expect(said == words, "\(tree.drawn())")
        let placed = tree.all.filter { $0.press != nil }.compactMap { key in words.first { key.said.hasPrefix($0) } }
        #expect(placed == (hand == .right ? ["Apart", "Moved", "Loose", "Held"] : ["Moved", "Apart", "Held", "Loose"]))
        let keys = tree.keys.filter { key in words.contains { key.said.hasPrefix($0) } }
        #expect(Set(keys.map(\.leastSize.height)) == [100], "none is easier than the truth")
        let foot = tree.all.filter { $0.press != nil }.map(\.said).filter { ["Undo", "Skip"].contains($0) }
        #expect(foot == (hand == .right ? ["Undo", "Skip"] : ["Skip", "Undo"]))
        try scene.away()
    }

    @Test func largeTextKeepsUndoAndTheWayToTheRest() throws {
        let scene = try Scene()
        try scene.card().untilTorque()
        let fingers = Fingers(scene.app(), size: .accessibility3)
        let said = fingers.tree.keys.map(\.said)
        #expect(said.contains("Undo") && said.contains("More") && !said.contains("Photo"), "\(said)")
        try fingers.press("More")
        #expect(fingers.tree.keys.contains { $0.said.hasPrefix("Photo") })
        try fingers.press("Back to the card")
        #expect(fingers.tree.keys.contains { $0.said.hasPrefix("Held") })
        try scene.away()
    }

    @Test func aListIsFoundAgainWhereItWasLeft() throws {
        let scene = try Scene()
        let app = scene.app()
        app.keepScrolled("rig Wren", 3)
        try scene.again()
        let fingers = Fingers(scene.app())
        #expect(fingers.tree.all.contains { $0.value == "3" }, "\(fingers.tree.drawn())")
        fingers.app.keepScrolled("rig Wren", nil)
        #expect(!fingers.tree.all.contains { $0.value == "3" }, "at its top")
        try scene.away()
    }

    @Test func everyPartOfADrawingIsPainted() throws {
        let scene = try Scene()
        let strip = try scene.core.rig(scene.rig, 328).strip
        let tree = Watched(Painted(strip, description: "strip")).tree
        #expect(tree.all.contains { $0.note == "(\(strip.parts.count) parts)" }, "\(tree.drawn())")
        let steps = [Segment.move(x: 0, y: 0), .line(x: 1, y: 0), .arc(x: 0, y: 0, radius: 1, from: 0, sweep: 90), .close]
        #expect(path(steps).steps == 4)
        try scene.away()
    }

    @Test(arguments: Look.allCases)
    func whatIsReadHasSevenToOne(look: Look) {
        let on = tokens(of: look)
        let pairs = [(on.ink, on.plate), (on.ink, on.key), (on.ink, on.well), (on.onMark, on.mark), (on.onCaution, on.caution)]
        for (ink, ground) in pairs { #expect(contrast(ink, ground) >= 7, "\(look): \(ink.parts) on \(ground.parts)") }
        #expect(contrast(on.hair, on.plate) >= 3)
    }

    @Test func textGrowsWithThePhonesOwnSizes() {
        #expect(DynamicTypeSize.large.scale == 1)
        #expect(DynamicTypeSize.allCases.map(\.scale) == DynamicTypeSize.allCases.map(\.scale).sorted())
        #expect(TypeRole.body.height(at: 2) == 28)
        #expect(TypeRole.body.height(at: DynamicTypeSize.accessibility5.scale) > 40)
        #expect(TypeRole.torque.height(at: 3) == 96)
    }

    @Test func aTreeIsReadable() {
        let tree = Watched(StuckPage(sentence: "The logbook is held.")).tree
        #expect(tree.drawn().contains("text \"The logbook is held.\""), "\(tree.drawn())")
    }
}

/// The contrast ratio of two colours, from 1 to 21 (WCAG 2.2, definition of contrast ratio and of relative luminance).
private func contrast(_ a: Color, _ b: Color) -> Double {
    let light = { (colour: Color) in
        let parts = colour.parts.map { $0 <= 0.04045 ? $0 / 12.92 : pow(($0 + 0.055) / 1.055, 2.4) }
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2]
    }
    return (max(light(a), light(b)) + 0.05) / (min(light(a), light(b)) + 0.05)
}
