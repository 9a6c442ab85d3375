import Bridge

/// What the screens ask of the core, call by call: live over a logbook, failing in tests of refusals, of a sample in
/// previews. A call is made where it is needed and gives all that a screen shows.
public struct Core {
    public var text: () throws -> [String: String]
    public var rigs: () throws -> RigsScreen
    public var layouts: () throws -> [LayoutLine]
    public var startFrom: (_ layout: String, _ name: String) throws -> String
    public var rig: (_ rig: String, _ width: Double) throws -> RigView
    public var firstWalk: (_ rig: String) throws -> FirstWalk?
    public var start: (_ rig: String, _ bays: [String], _ secondLook: Bool) throws -> Told
    public var card: (_ rig: String, _ room: Room) throws -> CardView
    public var press: (_ rig: String, _ press: Press, _ room: Room) throws -> PressedView
    public var weigh: (_ rig: String, _ key: String, _ typed: [String], _ width: Double) throws -> WeighedView
    public var bay: (_ rig: String, _ code: String, _ width: Double) throws -> BayView
    public var photoShow: (_ rig: String, _ bay: String) throws -> Told
    public var pin: (_ rig: String, _ point: String, _ at: PinPlace?) throws -> Told
    public var photoAdd: (_ rig: String, _ place: String, _ path: String) throws -> Told
    public var photoExpected: (_ rig: String, _ place: String, _ path: String) throws -> String
    public var photoForgotten: (_ path: String) throws -> String
    public var photosArrived: () throws -> [ArrivedLine]
    public var result: (_ rig: String, _ width: Double) throws -> ResultView
    public var papers: (_ rig: String) throws -> [Key]
    public var writePaper: (_ rig: String, _ key: String, _ country: String, _ folder: String) throws -> String
    public var findings: (_ rig: String) throws -> FindingsScreen
    public var findingsPress: (_ rig: String, _ key: String, _ answers: [String]) throws -> Told
    public var past: (_ rig: String, _ code: String?, _ width: Double) throws -> PastView
    public var tables: (_ path: String) throws -> TablesScreen
    public var calendar: (_ rig: String) throws -> String
    public var notices: () throws -> [NoticeLine]
    public var torqueForm: () throws -> [TorqueQuestion]
    public var torque: (_ fields: [Field]) throws -> TorqueScreen
    public var sources: (_ rig: String) throws -> SourcesScreen
    public var change: (_ rig: String, _ code: String, _ fields: [Field]) throws -> [Told]
    public var setUpForm: (_ rig: String, _ piece: Piece, _ bay: String) throws -> SetUpForm
    public var setUpAdd: (_ rig: String, _ piece: Piece, _ bay: String, _ answers: [String]) throws -> Added
    public var setUpCopy: (_ rig: String, _ point: String) throws -> Added
    public var facts: (_ rig: String, _ code: String) throws -> Facts
    public var retire: (_ rig: String, _ code: String) throws -> [Told]
    public var plan: (_ rig: String, _ minutes: UInt16) throws -> PlanScreen
    public var followPlan: (_ rig: String, _ minutes: UInt16) throws -> Told
    public var leavePlan: (_ rig: String) throws -> Told
    public var whenNext: (_ rig: String) throws -> WhenScreen
    public var whenPress: (_ rig: String, _ key: String, _ typed: [String]) throws -> Told
    public var backUp: (_ path: String, _ passphrase: String) throws -> BackupScreen
    public var restorePlan: (_ from: String, _ passphrase: String) throws -> RestoreScreen
    public var restore: (_ from: String, _ passphrase: String) throws -> RestoreScreen
    public var verify: () throws -> VerifyScreen
    public var scrolled: (_ place: String) throws -> UInt32
    public var keepScrolled: (_ place: String, _ down: UInt32) throws -> Void
}
