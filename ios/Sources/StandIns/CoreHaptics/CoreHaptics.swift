// A test double of the part that the app uses, for Linux; names and signatures are Apple's, from memory.
import Foundation

public struct CHHapticDeviceCapability { public let supportsHaptics: Bool }

public final class CHHapticEngine: @unchecked Sendable {
    public static func capabilitiesForHardware() -> CHHapticDeviceCapability { CHHapticDeviceCapability(supportsHaptics: false) }
    public var isAutoShutdownEnabled = false
    public init() throws {}
    public func start() throws {}
    public func makePlayer(with pattern: CHHapticPattern) throws -> any CHHapticPatternPlayer { Player() }
}

private struct Player: CHHapticPatternPlayer { func start(atTime time: TimeInterval) throws {} }

public protocol CHHapticPatternPlayer { func start(atTime time: TimeInterval) throws }

public final class CHHapticPattern: NSObject, @unchecked Sendable {
    public let duration: TimeInterval
    public init(events: [CHHapticEvent], parameters: [CHHapticDynamicParameter]) throws {
        duration = events.map { $0.relativeTime + $0.duration }.max() ?? 0
    }
}

public final class CHHapticDynamicParameter: NSObject {}

public struct CHHapticEventParameter {
    public struct ID: Sendable { public static let hapticIntensity = ID(), hapticSharpness = ID() }
    public init(parameterID: ID, value: Float) {}
}

public final class CHHapticEvent: NSObject {
    public struct EventType: Sendable { public static let hapticContinuous = EventType(), hapticTransient = EventType() }
    public let relativeTime: TimeInterval
    public let duration: TimeInterval
    public init(eventType: EventType, parameters: [CHHapticEventParameter], relativeTime: TimeInterval, duration: TimeInterval) {
        (self.relativeTime, self.duration) = (relativeTime, duration)
    }
}
