@MainActor @preconcurrency public protocol App {
    associatedtype Body: Scene
    @SceneBuilder @MainActor var body: Body { get }
    @MainActor init()
}

extension App {
    @MainActor public static func main() { fatalError("this double starts no app") }
}

@MainActor @preconcurrency public protocol Scene {}

public struct WindowGroup<Content: View>: Scene {
    public init(@ViewBuilder content: () -> Content) {}
}

@resultBuilder public enum SceneBuilder {
    public static func buildBlock<S: Scene>(_ scene: S) -> S { scene }
}
