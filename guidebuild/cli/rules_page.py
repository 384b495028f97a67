"""All rules as one page of HTML that needs nothing beside it: the site's own page, with its look inside."""

from guidebuild.build.rules_site import rules_page as site_page
from guidebuild.handover.single import single
from guidebuild.outputs.html.assets import assets
from guidebuild.outputs.html.paths import RULES

THEME, LANGUAGE = "sheet", "en"


def rules_page() -> str:
    """The page."""
    files = {**dict(assets(THEME)), **site_page(THEME, LANGUAGE, start="")}
    return single(RULES, files).decode()
