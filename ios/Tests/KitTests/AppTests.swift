import Bridge
import Foundation
import Testing
@testable import Kit

/// The app as a whole: where it begins, where it leads, and what it says where the core refuses.
@MainActor @Suite struct AppTests {
    @Test func itBeginsWhereAPersonIs() throws {
        let scene = try Scene()
        #expect(scene.app().place == .rig(scene.rig), "the only rig")
        let other = try scene.core.startFrom("sample-trailer", "Other")
        #expect(scene.app().place == .rigs)
        _ = try scene.core.start(other, [], false)
        #expect(scene.app().place == .walk(other), "the walk that is open")
        try scene.away()
    }

    @Test func everyPlaceHasAScreenAndAWayBack() throws {
        let scene = try Scene()
        try scene.card().untilTorque()
        let app = scene.app()
        let bay = try #require(scene.core.rig(scene.rig, 328).screen.bays.first).code
        let places: [Place] = [
            .rigs, .rig(scene.rig), .walk(scene.rig), .bay(scene.rig, bay), .result(scene.rig), .safe(back: .rigs), .torque(back: .rig(scene.rig)),
            .pins(scene.rig, bay), .setUp(scene.rig), .plan(scene.rig), .whenNext(scene.rig),
            .past(scene.rig, nil, back: .rig(scene.rig)), .findings(scene.rig), .papers(scene.rig, back: .findings(scene.rig)),
            .adding(scene.rig, .bay, bay: "", back: .setUp(scene.rig)), .facts(scene.rig, bay, back: .bay(scene.rig, bay)),
        ]
        for place in places {
            app.go(to: place)
            if case .stuck(let why) = app.shown { lost("\(place): \(why)") }
            for _ in 0..<10 { app.back() }
            #expect(app.place == .rigs, "\(place)")
        }
        try scene.away()
    }

    @Test func aCoreThatRefusesEverythingIsToldInItsOwnWords() {
        let phone = Remembered()
        let app = AppModel(core: .failing("The disk is full. Make room, then open the app again."), phone: phone.phone)
        guard case .stuck(let why) = app.shown else { return lost("\(app.place)") }
        #expect(why == "The disk is full. Make room, then open the app again.")
        app.go(to: .torque(back: .rigs))
        guard case .stuck = app.shown else { return lost("\(app.place)") }
    }

    @Test func choicesAreKept() throws {
        let scene = try Scene()
        let app = scene.app()
        app.go(to: .safe(back: .rig(scene.rig)))
        guard case .safe(let safe) = app.shown else { return lost("\(app.place)") }
        safe.send(.looks(.night))
        safe.send(.holds(.left))
        #expect(app.look == .night && app.hand == .left)
        #expect(scene.app().look == .night && scene.app().hand == .left)
        try scene.away()
    }

    @Test func anotherRoomIsDrawnAnewAndLosesNothing() throws {
        let scene = try Scene()
        try scene.card().untilTorque()
        let app = scene.app()
        guard case .card(let before) = app.shown else { return lost("\(app.place)") }
        app.lay(width: 320, scale: 2)
        guard case .card(let after) = app.shown else { return lost("\(app.place)") }
        #expect(before.state.view.line.width != after.state.view.line.width)
        #expect(before.state.view.card.point == after.state.view.card.point)
        try scene.away()
    }

    @Test func thePreviewIsTheRealCore() throws {
        #expect(try Core.preview().rigs().rigs.count == 1)
        #expect(throws: (any Error).self) { try Core.preview("no such layout").rigs() }
    }

    @Test func aWordOfTheShellIsInThePersonsLanguage() throws {
        let scene = try Scene(language: "es")
        let app = scene.app()
        #expect(app.say("shell-back") == "Atrás")
        #expect(app.say("not a key") == "not a key")
        try scene.away()
    }
}
