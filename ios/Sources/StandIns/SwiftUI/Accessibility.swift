public struct AccessibilityTraits: OptionSet, Sendable {
    public let rawValue: Int
    public init(rawValue: Int) { self.rawValue = rawValue }
    public static let isButton = Self(rawValue: 1), isHeader = Self(rawValue: 2), isSelected = Self(rawValue: 4)
    public static let isStaticText = Self(rawValue: 8), isImage = Self(rawValue: 16), updatesFrequently = Self(rawValue: 32)

    var names: String {
        let all: [(Self, String)] = [(.isButton, "button"), (.isHeader, "header"), (.isSelected, "selected"), (.isImage, "image"), (.updatesFrequently, "updates")]
        return all.filter { contains($0.0) }.map(\.1).joined(separator: " ")
    }
}

public struct AccessibilityChildBehavior: Hashable, Sendable {
    let name: String
    public static let ignore = Self(name: "ignore"), contain = Self(name: "contain"), combine = Self(name: "combine")
}

extension View {
    public func accessibilityLabel<S: StringProtocol>(_ label: S) -> some View {
        noted("labelled") { $0.label = String(label) }
    }
    public func accessibilityValue<S: StringProtocol>(_ value: S) -> some View {
        noted("valued") { $0.value = String(value) }
    }
    public func accessibilityAddTraits(_ traits: AccessibilityTraits) -> some View {
        noted("traits") { $0.traits.formUnion(traits) }
    }
    public func accessibilityHidden(_ hidden: Bool) -> some View {
        noted("hidden") { $0.hidden = hidden }
    }
    public func accessibilitySortPriority(_ priority: Double) -> some View {
        noted("sorted") { $0.priority = priority }
    }
    public func accessibilityElement(children: AccessibilityChildBehavior = .ignore) -> some View {
        Changed(self) { view, at in
            var below = view(at)
            if children == .contain { return [Node("container", children: below)] }
            var node = below.count == 1 ? below.removeFirst() : Node("element", children: below)
            node.label = node.label ?? (children == .combine ? node.said : "")
            return [node]
        }
    }
}

public struct AccessibilityNotification {
    public struct Announcement {
        let text: String
        public init(_ text: String) { self.text = text }
        public func post() { AccessibilityNotification.posted.append(text) }
    }
    /// What was announced, for tests.
    nonisolated(unsafe) public static var posted: [String] = []
}
