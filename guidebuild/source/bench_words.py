"""Words that people say on the bench, and the word of the markup that each may mean.

Likeness of letters can't know that a bolt is a fastener; without this list `screws` would be taken for `stores`.
Where a word may mean several that may stand there, the first is told and none is taken.
Source: common practice, no source.
"""

from collections.abc import Mapping

_MEANT = {
    # what a device is made of
    "fasteners": "screws bolts nuts washers studs screw-list hardware",
    "connectors": "plugs cables connections leads flexes hoses wiring",
    "joints": "clips seals glues adhesives latches hooks tapes gaskets hinges",
    "stores": "energies springs fluids charges capacitors",
    "functions": "features capabilities",
    "hazards": "dangers risks warnings cautions safety",
    "options": "variants revisions versions configurations",
    "parts": "components pieces modules",
    "pictures": "photos images",
    "views": "drawings outlines",
    "device": "id model product machine",
    "base": "chassis frame",
    "identify": "recognise recognize nameplate",
    # how things lie
    "mounted-on": "host on parent fitted-to attached-to fixed-to mounted sits-on part-of",
    "behind": "hidden-by under covered-by beneath below hidden cover",
    "joins": "between connects mates ends links fixes",
    "holds": "fixes fastens secures joins",
    "source": "feeds powers power supply",
    "holes": "places positions where",
    "screw": "designation thread size spec type",
    # blocks
    "fastener": "screw bolt nut screws bolts fasteners",
    "connector": "plug cable lead flex connectors plugs cables",
    "joint": "clip seal glue latch hook tape gasket joints clips",
    "store": "spring fluid capacitor charge energy",
    "part": "component piece module parts",
    "check": "test verify inspect checks tests",
    "video": "film movie clip",
    "points": "marks markers callouts",
    "wait": "timer pause delay",
    "method": "way alternative choose variant",
    "material": "consumable supply materials supplies",
    "power": "switch",
    "caution": "warning danger notice cautions safety hazard",
    "stage": "phase section chapter",
    # acts
    "exchange": "replace swap change",
    "refit": "fit install mount reinstall reassemble assemble attach replace put-back screw-in insert",
    "remove": "detach unmount dismount take-off take-out extract unscrew undo unfasten pull-out",
    "lift": "raise open swing",
    "lower": "close shut",
    "loosen": "slacken",
    "disconnect": "unplug unseat pull detach remove open",
    "reconnect": "plug plug-in connect seat attach refit close",
    "release": "unclip unhook unlatch unlock unstick prise pry drain discharge bleed empty open remove",
    "close": "clip clip-in hook latch lock snap shut stick refit",
    "restore": "fill refill charge tension set",
    "switch-off": "off power-off turn-off",
    "switch-on": "on power-on turn-on",
    "replace": "exchange swap change repair",
    "inspect": "check look examine",
    "tighten": "torque-up fasten drive",
    # details
    "expect": "result expected should see",
    "if-not": "else otherwise on-fail failure",
    "measure": "measurement value reading",
    "use": "name tool item",
    "avoid": "do prevent action",
    "time": "minutes duration for seconds hours",
    "note": "remark comment hint",
    "when": "if only-if condition",
    "title": "name heading",
    "part-number": "sku article order-number",
    "materials": "consumables supplies",
    "forms": "variants versions",
}


def _turned(meant: Mapping[str, str]) -> dict[str, tuple[str, ...]]:
    found: dict[str, tuple[str, ...]] = {}
    for word, said in meant.items():
        for one in said.split():
            found[one] = (*found.get(one, ()), word)
    return found


BENCH_WORDS: Mapping[str, tuple[str, ...]] = _turned(_MEANT)
