@propertyWrapper @preconcurrency public struct State<Value>: Linked {
    final class Box { var value: Value; init(_ value: Value) { self.value = value } }
    final class Link { var box: Box; init(_ box: Box) { self.box = box } }
    private let held: Link

    public init(wrappedValue: Value) { held = Link(Box(wrappedValue)) }
    public init(initialValue: Value) { held = Link(Box(initialValue)) }

    public var wrappedValue: Value {
        get { held.box.value }
        nonmutating set { held.box.value = newValue }
    }

    func link(_ at: Surroundings, _ path: String) {
        if let known = at.memory.states[path] as? Box { held.box = known } else { at.memory.states[path] = held.box }
    }
}

@propertyWrapper public struct Binding<Value> {
    private let get: () -> Value
    private let set: (Value) -> Void

    public init(get: @escaping @Sendable () -> Value, set: @escaping @Sendable (Value) -> Void) {
        (self.get, self.set) = (get, set)
    }

    public var wrappedValue: Value {
        get { get() }
        nonmutating set { set(newValue) }
    }

    public var projectedValue: Binding<Value> { self }
}

@propertyWrapper public struct Environment<Value>: Linked {
    final class Link { var values = EnvironmentValues() }
    private let path: KeyPath<EnvironmentValues, Value>
    private let held = Link()

    public init(_ path: KeyPath<EnvironmentValues, Value>) { self.path = path }

    public var wrappedValue: Value { held.values[keyPath: path] }

    func link(_ at: Surroundings, _ path: String) { held.values = at.values }
}

public protocol EnvironmentKey {
    associatedtype Value
    static var defaultValue: Value { get }
}

public struct EnvironmentValues {
    private var kept: [ObjectIdentifier: Any] = [:]
    public var dynamicTypeSize = DynamicTypeSize.large
    public var scenePhase = ScenePhase.active
    public var accessibilityReduceMotion = false
    public var isEnabled = true

    public init() {}

    public subscript<K: EnvironmentKey>(key: K.Type) -> K.Value {
        get { kept[ObjectIdentifier(key)] as? K.Value ?? K.defaultValue }
        set { kept[ObjectIdentifier(key)] = newValue }
    }
}

public enum DynamicTypeSize: Hashable, Comparable, CaseIterable, Sendable {
    case xSmall, small, medium, large, xLarge, xxLarge, xxxLarge
    case accessibility1, accessibility2, accessibility3, accessibility4, accessibility5

    public var isAccessibilitySize: Bool { self >= .accessibility1 }
}

public enum ScenePhase: Comparable, Sendable { case background, inactive, active }
