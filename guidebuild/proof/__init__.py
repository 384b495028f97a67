"""Floor 3: the device taken apart in memory, in every configuration at once, and what that showed.

`prove(guide, device)` in `prove.py` gives a `Proof`. Which part of it serves which rule:

- not-in-this-configuration, act-does-not-apply, out-of-reach, part-still-held, not-in-place, live-disconnect,
  live-reconnect, no-source, check-without-power, check-without-plug, renewed-too-late, emptied-in-vain,
  stored-energy-left, restored-while-open: `proof.unmet`, by `need`.
- fastener-not-returned, fastener-left-loose, connector-left-open, joint-left-open, part-not-refitted,
  single-use-reused, part-lost-with-old-unit, left-over, packing-left-on, store-not-refilled, goal-not-met:
  `proof.endings`, by `because`, `found` and the thing's kind.
- methods-end-differently: `proof.partings`. no-method-applies, step-never-shown: the conditions of the guide
  and `Passage.shown`.
- remedy-never-reached, resume-not-shown: `proof.entries`. remedy-does-not-rejoin: whatever of `unmet`, `partings`
  and `endings` has `after` set.
- function-untested, test-after-closing, cable-strained, work-while-on, stopped-live: `passages` with what was
  `walked` in them, asked by the functions in `questions/`; `again.scene_at` asks a kept moment whatever the walk
  itself asks (what hides, what holds, what moves as one piece).
- record-impossible: `proof.layout`, which holds the static questions of `guidebuild/device/`.

How it is built: `bench` holds what stays the same, `scene` what changes, `cells` is the value of one thing in all
configurations. An act is written out by `shorthand`, asked in `needs/` (one file a need), done in `effects/`.
`walk/` goes through steps, methods and remedies; `ending/` looks at what is left. Nothing ever walks one
configuration by itself.
"""
