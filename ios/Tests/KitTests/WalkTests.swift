import Bridge
import Foundation
import Testing
@testable import Kit

/// A walk by the model of the card screen, over the real core.
@MainActor @Suite struct WalkTests {
    private func walking(_ work: (Scene, CardModel) throws -> Void) throws {
        let scene = try Scene()
        try work(scene, try scene.card())
        try scene.away()
    }

    @Test func aWholeWalkEndsInItsResult() throws {
        let scene = try Scene()
        let app = scene.app()
        guard case .rig(let home) = app.shown else { return lost("\(app.place)") }
        home.send(.walk)
        guard case .card(let card) = app.shown else { return lost("\(app.place)") }
        for _ in 0..<2000 where app.place == .walk(scene.rig) { try card.answerFirst() }
        guard case .result(let result) = app.shown else { return lost("\(app.place)") }
        #expect(!result.state.view.screen.ended.isEmpty)
        result.send(.papers)
        #expect(app.place == .papers(scene.rig, back: .result(scene.rig)))
        #expect(try scene.core.verify().whole)
        try scene.away()
    }

    @Test func aHeldPointIsOneTapAndFeltAsOne() throws {
        try walking { scene, model in
            try model.untilTorque()
            let point = model.state.view.card.point
            scene.phone.felt = []
            model.send(.press(try model.key("held")))
            #expect(point != model.state.view.card.point)
            #expect(scene.phone.felt == [.one])
        }
    }

    @Test func aMovedPointIsSetOnceTheBayIsChecked() throws {
        try walking { scene, model in
            try model.untilTorque()
            let point = model.state.view.card.point
            model.send(.press(try model.key("moved")))
            guard case .choice(_, let angles)? = model.state.asking?.ask else { return lost("no angle is asked for") }
            scene.phone.felt = []
            model.send(.answer(try #require(angles.first).code))
            #expect(scene.phone.felt == [.two])
            #expect(point != model.state.view.card.point)
            try model.until("left")
            #expect(point == model.state.view.card.point)
            model.send(.press(try #require(model.state.answers.first)))
            #expect(point != model.state.view.card.point)
        }
    }

    @Test func undoBringsTheCardBack() throws {
        try walking { _, model in
            try model.untilTorque()
            let point = model.state.view.card.point
            model.send(.press(try model.key("held")))
            model.send(.press(try model.key("undo")))
            #expect(point == model.state.view.card.point)
        }
    }

    @Test func aDoubleTapIsRecordedOnce() throws {
        try walking { scene, model in
            try model.untilTorque()
            let card = model.state.view.card
            let press = Press(act: card.act, seq: card.seq, point: card.point, key: "held", typed: [])
            let room = Room(width: 360, scale: 1)
            let first = try scene.core.press(scene.rig, press, room)
            let second = try scene.core.press(scene.rig, press, room)
            #expect(second.told?.repeated == true)
            #expect(first.view?.card.point == second.view?.card.point)
        }
    }

    @Test func aRefusedReadingChangesNothingAndSaysWhy() throws {
        try walking { scene, model in
            try model.until("read")
            let seq = model.state.view.card.seq
            scene.phone.felt = []
            model.send(.type(""))
            model.send(.press(try #require(model.state.answers.first)))
            #expect(model.state.refused.hasSuffix("."), "\(model.state.refused)")
            #expect(seq == model.state.view.card.seq)
            #expect(scene.phone.felt == [.refused])
        }
    }

    @Test func aReadingIsJudgedWhileItIsTyped() throws {
        try walking { _, model in
            try model.until("read")
            model.send(.type("0.2"))
            let dead = model.state.weighed?.sentences
            model.send(.type("118"))
            #expect(model.state.weighed?.sentences.isEmpty == false)
            #expect(model.state.weighed?.sentences != dead)
            model.send(.type(""))
            #expect(model.state.weighed == nil)
        }
    }

    @Test func aQuestionCanBeLeft() throws {
        try walking { _, model in
            try model.untilTorque()
            model.send(.press(try model.key("moved")))
            model.send(.leave)
            #expect(model.state.asking == nil)
            #expect(model.state.view.card.kind == "point")
        }
    }

    @Test func theExactCardIsThereWhenTheProcessComesBack() throws {
        try walking { scene, model in
            try model.untilTorque()
            let card = model.state.view.card
            try scene.again()
            guard case .card(let back) = scene.app().shown else { return lost("the app begins elsewhere") }
            #expect(card.point == back.state.view.card.point)
            #expect(card.seq == back.state.view.card.seq)
        }
    }

    @Test func aWaitRunsOnWhileNothingIsPressed() throws {
        try walking { scene, model in
            try model.until("open") { $0.state.view.card.waits }
            let before = model.state.view.card
            try scene.clock.pass(seconds: 2)
            #expect(before == model.state.view.card)
            model.tick()
            #expect(before.cautions != model.state.view.card.cautions)
            #expect(before.seq == model.state.view.card.seq)
        }
    }

    @Test func aPhotoIsTakenInWhereTheCardIs() throws {
        try walking { scene, model in
            try model.untilTorque()
            let point = model.state.view.card.point
            let file = scene.folder + "/photo.png"
            try pixel.write(to: URL(fileURLWithPath: file))
            scene.phone.photo = { rig, place in (try? scene.core.photoAdd(rig, place, file).sentences) ?? [] }
            model.send(.press(try model.key("photo")))
            #expect(model.state.refused == "")
            #expect(point == model.state.view.card.point)
            #expect(try scene.core.verify().photos.entered == 1)
            #expect(try scene.core.verify().photos.missing == 0)
        }
    }

    @Test func thePadTakesOnlyWhatCanBeANumber() {
        #expect(after("", ".") == "0.")
        #expect(after("1.2", ".") == "1.2")
        #expect(after("12", "<") == "1")
        #expect(after("123456789", "0") == "123456789")
    }
}

/// A PNG of one grey pixel.
let pixel = Data([
    0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0x00, 0x00, 0x00, 0x0d, 0x49, 0x48, 0x44, 0x52, 0x00, 0x00, 0x00,
    0x01, 0x00, 0x00, 0x00, 0x01, 0x08, 0x00, 0x00, 0x00, 0x00, 0x3a, 0x7e, 0x9b, 0x55, 0x00, 0x00, 0x00, 0x0a, 0x49,
    0x44, 0x41, 0x54, 0x78, 0x9c, 0x63, 0x60, 0x00, 0x00, 0x00, 0x02, 0x00, 0x01, 0x48, 0xaf, 0xa4, 0x71, 0x00, 0x00,
    0x00, 0x00, 0x49, 0x45, 0x4e, 0x44, 0xae, 0x42, 0x60, 0x82,
])
