// swift-tools-version: 6.0
// Everything but the app's entry is in this package. On Linux the core is a static library that `./generate` puts into
// Generated/linux, and SwiftUI, UIKit and their like are stand-ins of ours with the same names (Sources/StandIns, see
// README.md). On Apple's platforms neither exists: the core is an XCFramework, and the frameworks are Apple's.
import PackageDescription

// What is generated, and what stands in for a framework, is not ours to make strict.
let swift5: [SwiftSetting] = [.swiftLanguageMode(.v5)]

#if os(Linux)
func standIn(_ name: String, below: [Target.Dependency] = []) -> Target {
    .target(name: name, dependencies: below, path: "Sources/StandIns/\(name)", exclude: name == "SwiftUI" ? ["README.md"] : [], swiftSettings: swift5)
}

let platform: [Target] = [
    standIn("UniformTypeIdentifiers"),
    standIn("UserNotifications"),
    standIn("CoreHaptics"),
    standIn("UIKit", below: ["UniformTypeIdentifiers"]),
    standIn("SwiftUI", below: ["UIKit"]),
    standIn("PhotosUI", below: ["UIKit"]),
    .target(name: "Shim", path: "Sources/StandIns/Shim"),
    .systemLibrary(name: "BaywalkMobileFFI", path: "Generated/BaywalkMobileFFI"),
    .systemLibrary(name: "BaywalkScreensFFI", path: "Generated/BaywalkScreensFFI"),
    // The files of the app itself, only to be type-checked.
    .target(name: "AppCheck", dependencies: ["Kit", "Screens", "Live", "SwiftUI"], path: "App",
            exclude: ["Info.plist", "Baywalk.entitlements", "PrivacyInfo.xcprivacy", "en.lproj", "es.lproj"]),
    .testTarget(name: "ScreensTests", dependencies: ["Bridge", "Kit", "Design", "Screens", "Live", "SwiftUI", "UIKit", "UserNotifications"]),
]
let core: [Target.Dependency] = ["BaywalkMobileFFI", "BaywalkScreensFFI"]
let link: [LinkerSetting] = [.unsafeFlags(["-L\(Context.packageDirectory)/Generated/linux"])]
let observed: [Target.Dependency] = ["Shim"]
let seen: [Target.Dependency] = ["SwiftUI", "UIKit"]
let phone: [Target.Dependency] = ["UIKit", "PhotosUI", "UserNotifications", "CoreHaptics", "UniformTypeIdentifiers"]
#else
let platform: [Target] = [.binaryTarget(name: "BaywalkCore", path: "Generated/BaywalkCore.xcframework")]
let core: [Target.Dependency] = ["BaywalkCore"]
let link: [LinkerSetting] = []
let observed: [Target.Dependency] = []
let seen: [Target.Dependency] = []
let phone: [Target.Dependency] = []
#endif

// Every module that a target imports is named here. An import that comes along unnamed compiles, but is not built anew
// when that module changes.
let bridge: [Target.Dependency] = ["Bridge"]
let kit: [Target.Dependency] = ["Bridge", "Kit"]
let design: [Target.Dependency] = ["Bridge", "Kit", "Design"]
let ours: [Target] = [
    .target(name: "Bridge", dependencies: core, path: "Generated/Bridge", swiftSettings: swift5, linkerSettings: link),
    .target(name: "Kit", dependencies: bridge + observed),
    .target(name: "Design", dependencies: kit + seen),
    .target(name: "Screens", dependencies: design + seen),
    .target(name: "Live", dependencies: kit + phone),
    .testTarget(name: "KitTests", dependencies: kit),
]

let package = Package(
    name: "Baywalk",
    defaultLocalization: "en",
    platforms: [.iOS(.v17), .macOS(.v14)],
    products: [.library(name: "Baywalk", targets: ["Bridge", "Kit", "Screens", "Live"])],
    targets: platform + ours
)
