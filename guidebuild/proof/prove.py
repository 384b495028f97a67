"""A guide proved on its device, in every configuration at once."""

from guidebuild.device.record import Device
from guidebuild.guide.configurations import Configurations, configurations
from guidebuild.guide.guide import Guide
from guidebuild.proof.bench import Bench
from guidebuild.proof.ending.endings import Ends, left_over
from guidebuild.proof.ending.wanted import Wanted
from guidebuild.proof.passages import in_document_order
from guidebuild.proof.proof import Proof
from guidebuild.proof.shorthand import Shorthand
from guidebuild.proof.start import begin
from guidebuild.proof.walk.findings import Findings
from guidebuild.proof.walk.main import main_way, walk_main
from guidebuild.proof.walk.record import Record
from guidebuild.proof.walk.rejoining import rejoin, tell_remedy
from guidebuild.proof.walk.remedies import Remedies
from guidebuild.proof.walk.stepping import Stepping


def prove(guide: Guide, device: Device) -> Proof:
    """Take the device apart in memory and put it back, as the guide says.

    `device` is the record as this guide has it: models joined, packing added. Raises TooManyConfigurations
    above 2**20 after merging; `guidebuild.guide.configurations.configurations` tells that beforehand.
    """
    return prove_in(guide, device, configurations(guide, device))


def prove_in(guide: Guide, device: Device, numbered: Configurations) -> Proof:
    """The same with configurations that are numbered already."""
    bench = Bench(guide, device, numbered)
    everywhere = bench.cells.everywhere
    scene = begin(bench)
    start, wanted = scene.snapshot(everywhere), Wanted(bench, scene)
    stepping = Stepping(Shorthand(bench), {step.id: step for step in guide.steps})
    main, way = Record(), main_way(guide.stages)
    walk_main(way, scene, stepping, main)
    ends, found = Ends(wanted, way.in_reach), Findings()
    found.add(main.unmet, main.partings, [*ends.of(scene, everywhere), *left_over(scene)])
    remedies = Remedies(guide, stepping)
    for mended in remedies.walk(bench, main.moments):
        tell_remedy(mended, found)
        rejoin(mended, way, stepping, ends, found)
    passages = in_document_order(guide.stages, main.passages, remedies.passages, start, bench.cells)
    return Proof(
        guide=guide,
        device=device,
        configurations=numbered,
        layout=bench.layout,
        passages=passages,
        unmet=tuple(found.unmet),
        partings=tuple(found.partings),
        endings=tuple(found.endings),
        entries=tuple(remedies.entries),
        start=start,
        end=scene.snapshot(everywhere),
    )
