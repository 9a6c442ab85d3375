### Words of the command.

## Help of the command

terminal-about = The yearly walk through a motorhome's or trailer's electrical terminations, offline.
terminal-command-try = Walk the sample rig from a recorded script and write its report
terminal-command-rig = Show, load or write out a rig
terminal-command-walk = Walk a rig, prompt by prompt; it goes on where it stopped
terminal-command-torque = Torque advice for a terminal of the rig
terminal-command-due = When the next walk is due, and why
terminal-command-findings = Open findings and what was decided
terminal-command-report = Write the report of a walk
terminal-command-verify = Check the whole ledger
terminal-command-calc = One computation: JSON in, JSON out
