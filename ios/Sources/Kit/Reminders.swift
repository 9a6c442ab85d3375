import Bridge
import Foundation

/// A reminder as the phone is asked to tell it: on a local day and hour, wherever the phone is then.
public struct Reminder: Equatable, Sendable {
    /// Its name in the core: another day makes another one.
    public let id: String
    public let rig: String
    public let title: String
    public let words: String
    /// Year, month, day, hour and minute, without a zone: the calendar trigger of the phone has its own.
    public let on: DateComponents
}

/// The most that may be pending; the core lists no more either.
public let mostReminders = 32

/// What is to be told from now on: the core's list, the nearest first. What is past was told, or is on the screen now.
public func reminders(_ core: Core, now: Date, calendar: Calendar = .current) throws -> [Reminder] {
    let ahead = try core.notices().compactMap { notice -> Reminder? in
        guard let told = moment(notice), let date = calendar.date(from: told), date > now else { return nil }
        return Reminder(id: notice.id, rig: notice.rig, title: notice.title, words: notice.words, on: told)
    }
    return Array(ahead.prefix(mostReminders))
}

/// A day and time as the core writes them, `2027-03-20` and `09:00`.
private func moment(_ notice: NoticeLine) -> DateComponents? {
    let day = notice.on.split(separator: "-").compactMap { Int($0) }
    let time = notice.at.split(separator: ":").compactMap { Int($0) }
    guard day.count == 3, time.count == 2 else { return nil }
    return DateComponents(year: day[0], month: day[1], day: day[2], hour: time[0], minute: time[1])
}
