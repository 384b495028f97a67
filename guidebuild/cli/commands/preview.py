"""Show the guides in a browser, and follow every save; a click on a picture writes a place into the record.

The page is on this machine's loopback address only: no other machine can reach it, and a page from elsewhere can
write nothing through it. Stop it with Ctrl-C.
"""

import sys
import threading
from argparse import ArgumentParser, Namespace

from guidebuild.cli import asking, codes


def arguments(parser: ArgumentParser) -> None:
    """What `preview` takes."""
    parser.add_argument("path", metavar="PATH", nargs="?", help="content folder (usual: content)")
    parser.add_argument("--port", type=int, default=0, metavar="N", help="usual: one that is free")


def run(args: Namespace) -> int:
    """Build once, then serve and watch until stopped."""
    from guidebuild.build.preview.pages import Pages
    from guidebuild.build.preview.server import ADDRESS, Server
    from guidebuild.build.trouble import Trouble

    pages = Pages(asking.whole(args.path).root)
    try:
        server = Server(pages, args.port)
    except (OSError, OverflowError) as error:
        raise Trouble(
            f"Port {args.port} can't be used: {error}. Name another with --port."
        ) from error
    pages.build()
    stop = threading.Event()
    watcher = threading.Thread(target=pages.watch, args=(stop,), daemon=True)
    watcher.start()
    print(
        f"Open http://{ADDRESS}:{server.server_port}/ (Ctrl-C stops it).",
        file=sys.stderr,
        flush=True,
    )
    try:
        server.serve_forever(poll_interval=0.2)
    except KeyboardInterrupt:
        print("Stopped.", file=sys.stderr)
    finally:
        stop.set()
        server.server_close()
    return codes.CLEAN
