#!/usr/bin/env python3
"""Publishes the whole kit of a house from a sheet, after a look at what that would change.

    STANDOFF_TOKEN=... house_client.py HOUSE SHEET.csv

The token is a publisher's of that house. The sheet is first sent as a dry run: a faulty one is told row by
row and nothing is changed; one that changes nothing is not sent again. Standard library only; the address
of the service stands in STANDOFF_URL, or is the usual one.
"""

import pathlib
import sys

import standoff

MOST_NAMED = 5


def told(report):
    """What a report says, with the first serial numbers of each kind."""
    lines = []
    for what in ("added", "changed", "retired", "unchanged"):
        serials = report[what]["serials"]
        named = ", ".join(serials[:MOST_NAMED]) + (" ..." if len(serials) > MOST_NAMED else "")
        named = f"  {named}" if serials and what != "unchanged" else ""
        lines.append(f"  {what:9} {report[what]['count']:4}{named}")
    return "\n".join(lines)


def main():
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    house, sheet = sys.argv[1], pathlib.Path(sys.argv[2]).read_bytes()
    service = standoff.Service()
    path = f"/v1/houses/{house}/units"
    now = service.must("GET", path + "?page_size=1").body["kit_etag"]
    trial = service.must("PUT", path + "?dry_run=true", sheet, If_Match=now).body
    print(f"{house}, tried:\n{told(trial)}")
    if not any(trial[what]["count"] for what in ("added", "changed", "retired")):
        print("Nothing to publish.")
        return 0
    done = service.must("PUT", path, sheet, If_Match=now).body
    print(f"{house}, published:\n{told(done)}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
