import Bridge
import Foundation
import Kit
import UserNotifications

/// Reminders of the core in the hands of the phone: filled anew at each start and each time the app leaves the front.
@MainActor
public final class Notices: NSObject, UNUserNotificationCenterDelegate {
    private let open: @MainActor (String) -> Void

    /// A tap on a notice opens its rig.
    public init(open: @escaping @MainActor (String) -> Void) {
        self.open = open
        super.init()
        UNUserNotificationCenter.current().delegate = self
    }

    /// Puts the core's list in the place of what was pending. Where it can't be read, what was pending stands.
    public func refill(_ core: Core, now: Date = Date()) {
        guard let next = try? reminders(core, now: now) else { return }
        let center = UNUserNotificationCenter.current()
        center.removeAllPendingNotificationRequests()
        for reminder in next { center.add(request(reminder), withCompletionHandler: nil) }
        if !next.isEmpty { Task { _ = try? await center.requestAuthorization(options: [.alert, .sound]) } }
    }

    public nonisolated func userNotificationCenter(_ center: UNUserNotificationCenter, didReceive response: UNNotificationResponse) async {
        guard let rig = response.notification.request.content.userInfo["rig"] as? String else { return }
        await open(rig)
    }
}

/// The request of a reminder: by the calendar, so that it stays a local day and hour when zone or clock change.
func request(_ reminder: Reminder) -> UNNotificationRequest {
    let content = UNMutableNotificationContent()
    (content.title, content.body, content.userInfo) = (reminder.title, reminder.words, ["rig": reminder.rig])
    let trigger = UNCalendarNotificationTrigger(dateMatching: reminder.on, repeats: false)
    return UNNotificationRequest(identifier: reminder.id, content: content, trigger: trigger)
}
