import Bridge
import Foundation
import SwiftUI
import Testing
@testable import Kit
@testable import Screens

/// What is read, decided and handed on after a walk, by the keys of its screens.
@MainActor @Suite struct AfterTests {
    /// A walk of one bay that has ended, in which the first joint that is checked with a tool was found so; which it was.
    private func walked(_ scene: Scene, found grade: String = "moved") throws -> String {
        _ = try scene.core.start(scene.rig, ["H"], false)
        var ended = false
        let card = try scene.card { ended = true }
        try card.untilTorque()
        let point = try #require(card.state.view.card.point)
        try card.press(try card.key(grade))
        for _ in 0..<2000 where !ended { try card.answerFirst() }
        #expect(ended)
        return point
    }

    /// Whether all of these words can be read.
    private func isRead(_ words: [String], _ fingers: Fingers) {
        let tree = fingers.tree
        let text = Set(tree.all.filter { !$0.hidden }.map(\.text))
        for words in words where !words.isEmpty { #expect(text.contains(words), "\(words) is not in\n\(tree.drawn())") }
    }

    @Test func thePastSaysAllThatItDrawsAndLeadsToAPoint() throws {
        let scene = try Scene()
        let before = try walked(scene, found: "held")
        try scene.clock.pass(seconds: 400 * 24 * 3600)
        let point = try walked(scene)
        #expect(point == before)
        let (fingers, home) = (Fingers(scene.app()), Place.past(scene.rig, nil, back: .rig(scene.rig)))
        try fingers.press(fingers.app.say("shell-past"))
        #expect(fingers.app.place == home)
        guard case .past(let past) = fingers.app.shown else { return lost("\(fingers.app.place)") }
        let (screen, charts) = (past.state.view.screen, past.state.view.charts)
        isRead(screen.charts.flatMap { [$0.title] + $0.told } + screen.why + [screen.title, screen.caution], fingers)
        #expect(!screen.charts.filter(\.drawn).isEmpty)
        for (told, picture) in zip(screen.charts, charts) {
            let painted = fingers.tree.all.contains { $0.note == "(\(picture.parts.count) parts)" }
            #expect(painted || !told.drawn, "\(told.title)")
        }
        #expect(screen.moved.count == 1, "one joint had moved")
        let moved = try #require(screen.moved.first)
        try fingers.press(moved.words)
        #expect(fingers.app.place == .past(scene.rig, moved.code, back: home))
        guard case .past(let one) = fingers.app.shown else { return lost("\(fingers.app.place)") }
        #expect(one.state.view.screen.walks.count == 2)
        isRead(one.state.view.screen.walks, fingers)
        try scene.away()
    }

    @Test func findingsAreReadAndDecidedAbout() throws {
        let scene = try Scene()
        _ = try walked(scene)
        let fingers = Fingers(scene.app())
        fingers.app.go(to: .result(scene.rig))
        try fingers.press(fingers.app.say("shell-findings"))
        guard case .findings(let model) = fingers.app.shown else { return lost("\(fingers.app.place)") }
        let screen = model.state.screen
        isRead(screen.keys.map(\.note) + screen.cautions, fingers)
        let key = try #require(screen.keys.first)
        guard case .choice(_, let decisions)? = key.asks.first else { return lost("no decision is asked for") }
        try fingers.press(key.word)
        try fingers.press(try #require(decisions.first { $0.code == "mended" }).word)
        guard case .choice(_, let days)? = model.state.asking?.ask else { return lost("no day is asked for") }
        try fingers.press(try #require(days.first { $0.code.isEmpty }).word)
        try fingers.type("made new")
        try fingers.press(fingers.app.say("shell-enter"))
        #expect(model.state.screen.keys.count == screen.keys.count - 1, "\(model.state.refused)")
        let closed = try #require(model.state.screen.findings.first { !$0.open })
        isRead(model.state.told + [closed.words, closed.followUp], fingers)
        try scene.away()
    }

    @Test func aPaperAndTheTablesAreHandedOnByAKey() throws {
        let scene = try Scene()
        _ = try walked(scene)
        scene.phone.outgoing = scene.folder
        let fingers = Fingers(scene.app())
        try fingers.press(fingers.app.say("shell-papers"))
        guard case .papers(let papers) = fingers.app.shown else { return lost("\(fingers.app.place)") }
        for (number, key) in papers.state.keys.enumerated() {
            isRead([key.note], fingers)
            try fingers.press(key.note.isEmpty ? key.word : "\(key.word), \(key.note)")
            #expect(scene.phone.handedOver.count == number + 1, "\(papers.state.refused)")
        }
        isRead([fingers.app.say("shell-hand-on")], fingers)
        fingers.app.back()
        try fingers.press(fingers.app.say("shell-safe"))
        try fingers.press(fingers.app.say("shell-tables"))
        #expect(scene.phone.handedOver.last == scene.folder + "/tables.zip")
        try scene.away()
    }
}
