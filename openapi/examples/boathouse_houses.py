#!/usr/bin/env python3
"""Loads the demo's two rental houses, their kit, and what is out of it already.

    STANDOFF_TOKEN=... boathouse_houses.py

The token is an admin's. Run it twice and the second time changes nothing. Standard library only; the
address of the service stands in STANDOFF_URL, or is the usual one.
"""

import json
import pathlib
import sys

import standoff

DATA = pathlib.Path(__file__).with_name("houses")
HOUSES = ("ostrel-hire", "vennick-loan-store")


def tell_terms(service, house):
    path = f"/v1/houses/{house}"
    before = service.ask("GET", path)
    told = json.loads((DATA / f"{house}.json").read_text())
    after = service.must("PUT", path, told, If_Match=before.etag if before.status == 200 else None)
    if before.status != 200:
        return "made"
    return "as before" if after.etag == before.etag else "changed"


def publish(service, house):
    path = f"/v1/houses/{house}/units"
    sheet = (DATA / f"{house}.csv").read_bytes()
    kit_tag = service.must("GET", path + "?page_size=1").body["kit_etag"]
    report = service.must("PUT", path, sheet, If_Match=kit_tag).body
    return ", ".join(
        f"{report[what]['count']} {what}" for what in ("added", "changed", "retired", "unchanged")
    )


def hold(service, wish):
    """Makes a hold unless one of this name stands, and makes it certain unless it waits."""
    known = service.must("GET", f"/v1/holds?reference={wish['reference']}").body["items"]
    if known:
        return f"{known[0]['state']} as before"
    made = service.must("POST", "/v1/holds", wish, Idempotency_Key="demo-" + wish["reference"])
    if made.body["state"] == "tentative":
        step = f"/v1/holds/{made.body['id']}/confirm"
        made = service.must("POST", step, If_Match=made.etag)
    return made.body["state"]


def main():
    service = standoff.Service()
    for house in HOUSES:
        print(f"{house}: terms {tell_terms(service, house)}; units: {publish(service, house)}")
    for wish in json.loads((DATA / "out.json").read_text())["holds"]:
        print(f"{wish['reference']}: {hold(service, wish)}")


if __name__ == "__main__":
    sys.exit(main())
