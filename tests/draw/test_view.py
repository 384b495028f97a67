"""Views: from any drawing program's SVG, or from outlines in the record, to shapes in mm by id."""

import pytest

from guidebuild.draw.svg import Box
from guidebuild.draw.view import Drawn, read_view
from guidebuild.draw.view_symbols import view_symbols
from tests.draw.reading import tree
from tests.draw.records import device, view_of_file, view_of_outlines


def read(svg: str, size: tuple[int, int] = (80, 100)) -> Drawn:
    view = view_of_file(size)
    return read_view(device(view), view, svg)


def close(box: Box | None) -> tuple[float, ...]:
    assert box is not None
    return tuple(round(value, 2) for value in (box.x, box.y, box.width, box.height))


def test_the_view_box_is_as_large_as_the_record_says() -> None:
    drawn = read(
        '<svg viewBox="100 0 800 1000"><rect id="board" x="200" y="100" width="80" height="50"/></svg>'
    )
    assert close(drawn.box_of("board")) == (10, 10, 8, 5)


def test_without_a_view_box_the_size_counts() -> None:
    drawn = read(
        '<svg width="160mm" height="200mm"><rect id="board" x="20" y="20" width="40" height="40"/></svg>'
    )
    assert close(drawn.box_of("board")) == (10, 10, 20, 20)


TRANSFORMS = {
    "translate(10 20)": (11, 22, 4, 2),
    "scale(2)": (2, 4, 8, 4),
    "rotate(90)": (-4, 1, 2, 4),
    "rotate(90 10 10)": (16, 1, 2, 4),
    "matrix(1 0 0 1 5 5)": (6, 7, 4, 2),
    "translate(10) scale(2)": (12, 4, 8, 4),
    "skewX(45)": (3, 2, 6, 2),
    "nonsense(1)": (1, 2, 4, 2),
}


@pytest.mark.parametrize(("transform", "box"), TRANSFORMS.items())
def test_transforms_of_drawing_programs(transform: str, box: tuple[int, ...]) -> None:
    svg = (
        f'<svg viewBox="0 0 80 100"><g id="board" transform="{transform}">'
        '<rect x="1" y="2" width="4" height="2"/></g></svg>'
    )
    assert close(read(svg).box_of("board")) == box


SHAPES = {
    '<circle cx="10" cy="10" r="4"/>': (6, 6, 8, 8),
    '<ellipse cx="10" cy="10" rx="4" ry="2"/>': (6, 8, 8, 4),
    '<line x1="1" y1="2" x2="5" y2="9"/>': (1, 2, 4, 7),
    '<polyline points="1,2 5,9 7,3"/>': (1, 2, 6, 7),
    '<polygon points="1 2 5 9 7 3"/>': (1, 2, 6, 7),
    '<rect x="1" y="2" width="4" height="2" rx="1"/>': (1, 2, 4, 2),
    '<path d="M10,10a5,5 0 0 1 10,0z"/>': (10, 5, 10, 5),
}


@pytest.mark.parametrize(("shape", "box"), SHAPES.items())
def test_every_kind_of_shape(shape: str, box: tuple[int, ...]) -> None:
    svg = f'<svg viewBox="0 0 80 100"><g id="board">{shape}</g></svg>'
    assert close(read(svg).box_of("board")) == box


NOTHING = ['<path d="M0"/>', '<path d="M1e999,0H3"/>', '<rect width="-1" height="2"/>', '<circle r="0"/>',
           '<polygon points="1"/>', '<path d=""/>', '<path d="M0,0X"/>']  # fmt: skip


@pytest.mark.parametrize("shape", NOTHING)
def test_shapes_that_are_none_are_left_out(shape: str) -> None:
    assert (
        read(f'<svg viewBox="0 0 80 100"><g id="board">{shape}</g></svg>').box_of("board") is None
    )


def test_a_group_inside_a_group_is_its_own_thing() -> None:
    svg = (
        '<svg viewBox="0 0 80 100"><g id="board"><rect width="60" height="50"/><g id="layer1">'
        '<rect x="1" y="1" width="5" height="5"/></g><g id="plug"><rect x="9" y="9" width="9" height="9"/></g>'
        '<rect x="2" y="2" width="3" height="3"/></g><path d="M0,0H80"/></svg>'
    )
    assert [layer.id for layer in read(svg).layers] == ["board", "plug", "board", None]


def test_the_outline_is_what_no_other_shape_holds() -> None:
    svg = (
        '<svg viewBox="0 0 80 100"><g id="board"><rect class="mid" width="60" height="50"/>'
        '<rect class="mid" x="5" y="5" width="9" height="9"/><path class="thin" d="M-5,0H70"/></g></svg>'
    )
    (layer,) = read(svg).layers
    assert [close(shape.box) for shape in layer.outline] == [(0, 0, 60, 50)]


PAINT = {
    'class="wide solid"': "wide solid",
    'class="st0 mid"': "mid",
    'fill="none" stroke="#000"': "mid",
    'fill="#123456"': "ink",
    'fill="#fff"': "solid",
    'style="fill:#eee;stroke:#000000;stroke-width:2"': "mid solid",
    'style="fill:none"': "mid",
}


@pytest.mark.parametrize(("paint", "css"), PAINT.items())
def test_paint_becomes_a_line_of_the_sheet(paint: str, css: str) -> None:
    svg = f'<svg viewBox="0 0 80 100"><g id="board"><rect {paint} width="9" height="9"/></g></svg>'
    assert read(svg).layers[0].shapes[0].css == css


def test_outlines_of_the_record_are_a_view() -> None:
    view = view_of_outlines()
    drawn = read_view(device(view), view, None)
    assert [layer.id for layer in drawn.layers] == [
        "base",
        "board",
        "plug",
    ]  # unknown ids are left out
    base, board, plug = drawn.layers
    assert [shape.css for shape in base.shapes] == ["wide solid", "thin"]  # a body with a wall
    assert [shape.css for shape in board.shapes] == ["mid solid"]
    assert [shape.css for shape in plug.shapes] == ["mid solid", "thin"]  # a plug with its rib


def test_symbols_are_well_formed_and_have_unique_ids() -> None:
    view = view_of_outlines()
    symbols = tree(f"<svg>{view_symbols(read_view(device(view), view, None))}</svg>")
    ids = [node.get("id") for node in symbols.iter() if node.get("id")]
    assert (
        len(ids) == len(set(ids)) == 5
    )  # a part without anything inside its outline has no inner one
