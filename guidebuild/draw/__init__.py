"""Floor 4: drawings as strings of SVG, and photographs as bytes; the only importer of Pillow. All pure.

What the page calls:

- `screw.screw_svg(screw, scale, box, title, by_use)`, with `box = screw.screw_box(*screws_of_the_guide)`,
  so that lengths compare down the page; `screw.screw_symbols(*screws)` once in a page for `by_use`.
- `alike.alike_svg([Lookalike(label, screw), ...], title)`: the look-alike strip at `alike_scale`.
- `tray.lie_svg(screw, count, title)` and `tray.rule_svg(title)`: the tray sheet, 1:1.
- `times.wait_svg(seconds, words, title)`, `gauge.gauge_svg(least, most, unit)`,
  `squares.squares_svg(out, total, title)`.
- `symbols`: `alert_svg()` (its `fill` is that of the mark) and `alert_symbol()`, `first_angle_svg(title)`,
  `fork_svg(ways, joins)`, `revision_svg(issue, title)`,
  `cloud_svg()`; `keys.key_svg(kind)`: samples for the legend.
- `hatch.patterns_svg()`: once in each page that shows drawings.
- The locator: `view.read_view(view, name, svg_text)` reads a view of the record (cleaned) once;
  `symbols.view_symbols(drawn)` stands once in each page that shows it; `scene.scene_at(device, view, passage,
  labels, ...)` says what is where at a step; `locator.locator_svg(drawn, scene, title, description)` draws it.
  `scene.view_for(device, passage)` chooses the view. `labels` maps keys of things to what stands on the
  leader: numbers of screws, letters of parts, names of plugs.
- `photo.photo(data)`: an author's picture as bytes in, upright, bare and in three widths out;
  `photo_marks.overlay_svg(marks, width, height, title)`: its numbers and marks, as an overlay wider than it.

A drawing without `title` is an ornament (`aria-hidden`). Titles are words of the message catalogues, given
by the caller; drawings hold numbers, letters and designations only.

Classes to which a theme gives a look (widths in CSS px; `vector-effect: non-scaling-stroke` on all but
tubes and wires; symbols bring their own). Symbols are used from elsewhere in the page, so a look must hang
on the class alone (`.mid {…}`): a rule like `.view .mid` or `.view *` does not reach them:

- lines: `wide`, `mid`, `thin`, `ctr` (centre line), `hid` (hidden edge), `off` (chain with two dots: lifted
  or off), `now` (the work of this step, in the accent), `ldr` (leader), `halo` (paper, 5 px, under leaders
  on photos), `go` (bar of the allowed range), `sym`, and in views `tube`, `tube-in`, `tube-dots`, `wire`,
  `wire-in`;
- fills: `solid` (paper), `ink`, `tip` (arrow heads, dots), `tip-now` (accent), `halo-dot` and `hole` (paper:
  the pin in a recess), `hatch`, `hatch-fine`, `hatch-wide` (fill `url(#same-name)`), `box` (square round an
  order), `t-out` and `t-in` (squares of the plan), `run` (the bar of a wait), `h-line`, `cloud-line` (inside patterns);
- words: `num` (bold), `dim`, `fig`, `ord` and `differ` (bold, in the accent). Their sizes stand in the
  drawing, in its units; a theme sets face, weight and colour only;
- whole drawings: `screw`, `view` (`view alike`), `lie`, `rule50`, `wait-line`, `gauge`, `squares`, `key`,
  `alert`, `first-angle`, `fork`, `revtri`, `cloud`, `patterns` (takes no room: also for the symbols).
"""
