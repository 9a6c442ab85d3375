import Bridge
import Foundation
import Testing
@testable import Kit

/// What is planned, when it is due and what is told of it, over the real core.
@MainActor @Suite struct TimingTests {
    @Test func aPlanIsMadeFollowedAndLeft() throws {
        let scene = try Scene()
        var walked = 0
        let early = PlanModel(core: scene.core, rig: scene.rig) { walked += 1 }
        early.send(.type("10"))
        early.send(.make)
        #expect(early.state.screen?.stops.isEmpty == false, "\(early.state.refused)")
        early.send(.follow)
        #expect(!early.state.refused.isEmpty && walked == 0, "no walk is open yet")
        _ = try scene.core.start(scene.rig, [], false)
        let plan = PlanModel(core: scene.core, rig: scene.rig) { walked += 1 }
        plan.send(.type("99999999"))
        plan.send(.make)
        #expect(!plan.state.refused.isEmpty, "more minutes than there are")
        plan.send(.type("10"))
        plan.send(.make)
        plan.send(.follow)
        #expect(walked == 1, "\(plan.state.refused)")
        plan.send(.make)
        #expect(plan.state.screen?.followed == true)
        plan.send(.leave)
        #expect(plan.state.screen?.followed == false, "\(plan.state.refused)")
        try scene.away()
    }

    @Test func whatIsDueIsNotedRuledPutOffAndHandedOn() throws {
        let scene = try Scene()
        let model = try WhenModel(core: scene.core, phone: scene.phone.phone, rig: scene.rig)
        let press = { (code: String) in model.send(.press(try #require(model.state.screen.keys.first { $0.code == code }))) }
        try press("odometer")
        model.send(.answer("as far as the sea"))
        #expect(!model.state.refused.isEmpty)
        model.send(.answer("41234 mi"))
        #expect(model.state.refused == "")
        try press("rule")
        model.send(.answer("months"))
        model.send(.answer("6"))
        #expect(model.state.screen.rules.rules.count == 1, "\(model.state.refused)")
        try press("put_off 1")
        guard case .choice(_, let days)? = model.state.asking?.ask else { return lost("no day is asked for") }
        model.send(.answer(try #require(days.first).code))
        model.send(.answer("away until then"))
        #expect(model.state.refused == "")
        #expect(model.state.screen.due.items.contains { $0.putOff != nil })
        try press("drop_rule 1")
        #expect(model.state.screen.rules.rules.isEmpty)
        model.send(.calendar)
        #expect(scene.phone.calendars.last?.hasPrefix("BEGIN:VCALENDAR") == true)
        try scene.away()
    }

    private let calendar = {
        var calendar = Calendar(identifier: .gregorian)
        calendar.timeZone = TimeZone(secondsFromGMT: 0) ?? calendar.timeZone
        return calendar
    }()

    @Test func remindersAreTheCoresListByLocalDayAndHour() throws {
        let scene = try Scene()
        for number in 0..<40 { _ = try scene.core.startFrom("sample-trailer", "Trailer \(number)") }
        let listed = try scene.core.notices()
        #expect(listed.count == 32)
        let told = try reminders(scene.core, now: Date(timeIntervalSince1970: 0), calendar: calendar)
        #expect(told.count == 32)
        let (first, notice) = (try #require(told.first), try #require(listed.first))
        #expect(first.rig == notice.rig && first.title == notice.title && first.words == notice.words)
        let day = try #require(calendar.date(from: first.on))
        let parts = calendar.dateComponents([.year, .month, .day, .hour, .minute], from: day)
        let two = { (number: Int?) in String(("0" + "\(number ?? 0)").suffix(2)) }
        #expect("\(parts.year ?? 0)-\(two(parts.month))-\(two(parts.day)) \(two(parts.hour)):\(two(parts.minute))" == "\(notice.on) \(notice.at)")
        #expect(first.on.timeZone == nil, "the phone's own zone, wherever it is then")
        #expect(Set(told.map(\.id)).count == told.count)
        let past = try reminders(scene.core, now: Date.distantFuture, calendar: calendar)
        #expect(past.isEmpty, "what is past is not told again")
        try scene.away()
    }

    @Test func aDayThatMovesMakesAnotherReminder() throws {
        let scene = try Scene()
        let before = try reminders(scene.core, now: Date(timeIntervalSince1970: 0), calendar: calendar)
        let putOff = try #require(scene.core.whenNext(scene.rig).keys.first { $0.code == "put_off 1" })
        guard case .choice(_, let days)? = putOff.asks.first else { return lost("no day is asked for") }
        _ = try scene.core.whenPress(scene.rig, putOff.code, [try #require(days.last).code, "away until then"])
        let after = try reminders(scene.core, now: Date(timeIntervalSince1970: 0), calendar: calendar)
        #expect(before.first?.id != after.first?.id)
        try scene.away()
    }
}
