#!/usr/bin/env python3
"""Asks what every microphone of the demo's floor hears, and what would help; draws the floor plan.

    floor.py [ADDRESS [FOLDER]]

Standard library only. Without an address STANDOFF_URL is taken, or the usual one. With a folder the
floor plan and the matrix are left there as SVG. Exits 1 where a remedy does not keep its promise.
"""

import copy
import json
import os
import pathlib
import sys
import urllib.request

FLOOR = pathlib.Path(__file__).with_name("boathouse-floor.json")
WITHIN_DB = 0.05


def ask(service, question, accept="application/json"):
    request = urllib.request.Request(
        service + "/v1/floor/bleed",
        data=json.dumps(question).encode(),
        headers={"Content-Type": "application/json", "Accept": accept},
    )
    with urllib.request.urlopen(request, timeout=60) as response:
        return response.read().decode()


def isolation(answer, name):
    return next(m["isolation_db"] for m in answer["microphones"] if m["id"] == name)


def changed(question, name, remedy):
    """The question with a remedy that changes the microphone itself put in place."""
    other = copy.deepcopy(question)
    other["remedies"] = {"microphones": []}
    microphone = next(m for m in other["floor"]["microphones"] if m["id"] == name)
    microphone.pop("aim_at", None)
    setting = remedy["microphone"]
    for member in ("position_m", "azimuth_deg", "elevation_deg", "pattern"):
        microphone[member] = setting[member]
    return other


def main():
    usual = os.environ.get("STANDOFF_URL", "http://127.0.0.1:8080")
    service = sys.argv[1] if len(sys.argv) > 1 else usual
    question = json.loads(FLOOR.read_text())
    answer = json.loads(ask(service, question))
    broken = 0
    for microphone in answer["microphones"]:
        if "isolation_db" not in microphone:
            continue
        remedies = microphone.get("remedies", [])
        best = remedies[0] if remedies else None
        advice = f"{best['what']}: {best['gain_db']:+.1f} dB" if best else "nothing would help"
        print(f"{microphone['id']:15} {microphone['isolation_db']:6.1f} dB  {microphone['because']}")
        print(f"{'':15} {'':6}     {advice}")
        moves = [r for r in remedies if "microphone" in r]
        if moves:
            then = json.loads(ask(service, changed(question, microphone["id"], moves[0])))
            kept = isolation(then, microphone["id"])
            if abs(kept - moves[0]["isolation_db"]) > WITHIN_DB:
                broken += 1
                print(f"  promised {moves[0]['isolation_db']}, got {kept}", file=sys.stderr)
    if len(sys.argv) > 2:
        for picture in ("plan", "matrix"):
            drawn = ask(service, {**question, "picture": picture}, "image/svg+xml")
            pathlib.Path(sys.argv[2], f"boathouse-{picture}.svg").write_text(drawn)
    return 1 if broken else 0


if __name__ == "__main__":
    sys.exit(main())
