// A test double of the part that the app uses, for Linux; names and signatures are Apple's, from memory.
import Foundation

public struct UNAuthorizationOptions: OptionSet, Sendable {
    public let rawValue: UInt
    public init(rawValue: UInt) { self.rawValue = rawValue }
    public static let badge = Self(rawValue: 1), sound = Self(rawValue: 2), alert = Self(rawValue: 4)
}

open class UNNotificationContent: NSObject, @unchecked Sendable {
    var told = ("", "", [AnyHashable: Any]())
    public var title: String { told.0 }
    public var body: String { told.1 }
    public var userInfo: [AnyHashable: Any] { told.2 }
}

public final class UNMutableNotificationContent: UNNotificationContent, @unchecked Sendable {
    public override var title: String { get { told.0 } set { told.0 = newValue } }
    public override var body: String { get { told.1 } set { told.1 = newValue } }
    public override var userInfo: [AnyHashable: Any] { get { told.2 } set { told.2 = newValue } }
}

open class UNNotificationTrigger: NSObject, @unchecked Sendable {}

public final class UNCalendarNotificationTrigger: UNNotificationTrigger, @unchecked Sendable {
    public let dateComponents: DateComponents
    public let repeats: Bool
    public init(dateMatching components: DateComponents, repeats: Bool) { (dateComponents, self.repeats) = (components, repeats) }
}

public final class UNNotificationRequest: NSObject, @unchecked Sendable {
    public let identifier: String
    public let content: UNNotificationContent
    public let trigger: UNNotificationTrigger?
    public init(identifier: String, content: UNNotificationContent, trigger: UNNotificationTrigger?) {
        (self.identifier, self.content, self.trigger) = (identifier, content, trigger)
    }
}

public final class UNNotification: NSObject, @unchecked Sendable {
    public let request: UNNotificationRequest
    public init(request: UNNotificationRequest) { self.request = request }
}

public final class UNNotificationResponse: NSObject, @unchecked Sendable {
    public let notification: UNNotification
    public init(notification: UNNotification) { self.notification = notification }
}

public protocol UNUserNotificationCenterDelegate: AnyObject {
    func userNotificationCenter(_ center: UNUserNotificationCenter, didReceive response: UNNotificationResponse) async
}

public final class UNUserNotificationCenter: NSObject, @unchecked Sendable {
    private static let only = UNUserNotificationCenter()
    public static func current() -> UNUserNotificationCenter { only }
    public weak var delegate: (any UNUserNotificationCenterDelegate)?
    /// What is pending, for tests.
    public private(set) var pending: [UNNotificationRequest] = []

    public func requestAuthorization(options: UNAuthorizationOptions) async throws -> Bool { true }
    public func removeAllPendingNotificationRequests() { pending = [] }
    public func add(_ request: UNNotificationRequest, withCompletionHandler: (@Sendable ((any Error)?) -> Void)? = nil) { pending.append(request) }
}
