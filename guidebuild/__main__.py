"""`python -m guidebuild`."""

import sys

from guidebuild.cli.main import main

if __name__ == "__main__":
    sys.exit(main())
