import CoreHaptics
import Kit

/// Lets the hand feel what became of a tap, by count and length.
@MainActor
final class Haptics {
    private var engine: CHHapticEngine?

    func play(_ feel: Feel) {
        guard CHHapticEngine.capabilitiesForHardware().supportsHaptics else { return }
        do {
            let engine = try self.engine ?? CHHapticEngine()
            engine.isAutoShutdownEnabled = true
            self.engine = engine
            try engine.start()
            let pattern = try CHHapticPattern(events: beats(of: feel).map(event), parameters: [])
            try engine.makePlayer(with: pattern).start(atTime: 0)
        } catch {
            // What can't be felt is still seen; the next tap begins anew.
            engine = nil
        }
    }
}

/// A beat, in seconds: when it begins and how long it lasts.
struct Beat: Equatable {
    let from: Double
    let lasting: Double
}

private let short = 0.06
private let gap = 0.12
private let long = 0.4

func beats(of feel: Feel) -> [Beat] {
    switch feel {
    case .one: return shorts(1)
    case .two: return shorts(2)
    case .three: return shorts(3)
    case .long: return [Beat(from: 0, lasting: long)]
    case .refused: return [Beat(from: 0, lasting: long), Beat(from: long + gap, lasting: short)]
    }
}

private func shorts(_ count: Int) -> [Beat] { (0..<count).map { Beat(from: Double($0) * (short + gap), lasting: short) } }

private func event(_ beat: Beat) -> CHHapticEvent {
    let strong = [CHHapticEventParameter(parameterID: .hapticIntensity, value: 1), CHHapticEventParameter(parameterID: .hapticSharpness, value: 0.5)]
    return CHHapticEvent(eventType: .hapticContinuous, parameters: strong, relativeTime: beat.from, duration: beat.lasting)
}
