import Bridge

extension Core {
    /// A core that refuses every call with one sentence.
    public static func failing(_ sentence: String, kind: ProblemKind = .unexpected) -> Core {
        let fault = Fault.Told(kind: kind, sentence: sentence)
        return Core(
            text: { throw fault },
            rigs: { throw fault },
            layouts: { throw fault },
            startFrom: { _, _ in throw fault },
            rig: { _, _ in throw fault },
            firstWalk: { _ in throw fault },
            start: { _, _, _ in throw fault },
            card: { _, _ in throw fault },
            press: { _, _, _ in throw fault },
            weigh: { _, _, _, _ in throw fault },
            bay: { _, _, _ in throw fault },
            photoShow: { _, _ in throw fault },
            pin: { _, _, _ in throw fault },
            photoAdd: { _, _, _ in throw fault },
            photoExpected: { _, _, _ in throw fault },
            photoForgotten: { _ in throw fault },
            photosArrived: { throw fault },
            result: { _, _ in throw fault },
            papers: { _ in throw fault },
            writePaper: { _, _, _, _ in throw fault },
            findings: { _ in throw fault },
            findingsPress: { _, _, _ in throw fault },
            past: { _, _, _ in throw fault },
            tables: { _ in throw fault },
            calendar: { _ in throw fault },
            notices: { throw fault },
            torqueForm: { throw fault },
            torque: { _ in throw fault },
            sources: { _ in throw fault },
            change: { _, _, _ in throw fault },
            setUpForm: { _, _, _ in throw fault },
            setUpAdd: { _, _, _, _ in throw fault },
            setUpCopy: { _, _ in throw fault },
            facts: { _, _ in throw fault },
            retire: { _, _ in throw fault },
            plan: { _, _ in throw fault },
            followPlan: { _, _ in throw fault },
            leavePlan: { _ in throw fault },
            whenNext: { _ in throw fault },
            whenPress: { _, _, _ in throw fault },
            backUp: { _, _ in throw fault },
            restorePlan: { _, _ in throw fault },
            restore: { _, _ in throw fault },
            verify: { throw fault },
            scrolled: { _ in throw fault },
            keepScrolled: { _, _ in throw fault }
        )
    }
}
