import Bridge
import Foundation
import Testing
import UserNotifications
@testable import Kit
@testable import Live

/// What the phone is asked for, against the doubles of its frameworks.
@MainActor @Suite(.serialized) struct LiveTests {
    private let center = UNUserNotificationCenter.current()

    @Test func remindersPutTheCoresListInThePlaceOfWhatWasPending() throws {
        let scene = try Scene()
        let notices = Notices { _ in }
        for number in 0..<40 { _ = try scene.core.startFrom("sample-trailer", "Trailer \(number)") }
        notices.refill(scene.core, now: Date(timeIntervalSince1970: 0))
        #expect(center.pending.count == 32)
        notices.refill(scene.core, now: Date(timeIntervalSince1970: 0))
        #expect(center.pending.count == 32, "not doubled")
        let listed = try scene.core.notices()
        #expect(Set(center.pending.map(\.identifier)) == Set(listed.map(\.id)))
        #expect(center.pending.allSatisfy { ($0.trigger as? UNCalendarNotificationTrigger)?.repeats == false })
        notices.refill(.failing("The logbook can't be read."))
        #expect(center.pending.count == 32, "what was pending stands")
        try scene.away()
    }

    @Test func aTapOnANoticeOpensItsRig() async throws {
        var opened = ""
        let notices = Notices { opened = $0 }
        let reminder = Reminder(id: "one", rig: "wren", title: "Wren", words: "due", on: DateComponents(year: 2028, month: 3, day: 20, hour: 9, minute: 0))
        let response = UNNotificationResponse(notification: UNNotification(request: request(reminder)))
        await notices.userNotificationCenter(center, didReceive: response)
        #expect(opened == "wren")
    }

    @Test func aReminderIsACalendarDayAndNoInstant() throws {
        let on = DateComponents(year: 2028, month: 3, day: 20, hour: 9, minute: 0)
        let asked = request(Reminder(id: "one", rig: "wren", title: "Wren", words: "due", on: on))
        let trigger = try #require(asked.trigger as? UNCalendarNotificationTrigger)
        #expect(trigger.dateComponents == on && trigger.dateComponents.timeZone == nil)
        #expect(asked.content.title == "Wren" && asked.content.body == "due")
    }

    @Test func tapsAreFeltByCountAndLength() {
        #expect(beats(of: .one).count == 1 && beats(of: .two).count == 2 && beats(of: .three).count == 3)
        #expect(beats(of: .long) == [Beat(from: 0, lasting: 0.4)])
        #expect(beats(of: .refused).map(\.lasting) == [0.4, 0.06])
        for feel in [Feel.two, .three, .refused] {
            let all = beats(of: feel)
            #expect(zip(all, all.dropFirst()).allSatisfy { $0.from + $0.lasting < $1.from }, "beats run together")
        }
    }
}
