#!/usr/bin/env python3
"""Asks settings for every source of a session in one batch and prints a sheet.

    settings.py [ADDRESS]

Standard library only. The address may stand in STANDOFF_URL too. Exits 1 where a line could not be answered.
"""

import json
import os
import sys
import urllib.request

SESSION = [
    ("core/kick", "inside", 0.10),
    ("core/snare", "top", 0.05),
    ("core/violin", "spot", 0.50),
    ("core/trumpet", "spot", 0.40),
    ("core/harp", "spot", 0.60),
]


def questions(pack, preamp):
    for source, placement, distance_m in SESSION:
        yield {
            "source": source,
            "placement": placement,
            "distance_m": distance_m,
            "pack": pack,
            "preamp": preamp,
            "limit": 1,
        }


def ask(service, batch):
    body = "\n".join(json.dumps(question) for question in batch).encode()
    request = urllib.request.Request(
        service + "/v1/settings",
        data=body,
        headers={
            "Content-Type": "application/x-ndjson",
            "Accept": "application/x-ndjson",
        },
    )
    with urllib.request.urlopen(request, timeout=30) as response:
        return [json.loads(line) for line in response.read().decode().splitlines()]


def main():
    told = os.environ.get("STANDOFF_URL", "http://127.0.0.1:8080")
    service = sys.argv[1] if len(sys.argv) > 1 else told
    failed = False
    for (source, placement, distance_m), line in zip(
        SESSION, ask(service, questions("boathouse", "boathouse/recorder"))
    ):
        if "problem" in line:
            failed = True
            print(source, line["problem"]["detail"], file=sys.stderr)
            continue
        best = line["answer"]["recommendations"][0]
        settings = best["settings"]
        print(
            f"{source:14} {placement:7} {distance_m:4.2f} m  {best['microphone']:22}"
            f" {settings['pattern']:13} pad {settings['pad_db']:2.0f} dB"
            f"  high-pass {settings['high_pass_hz']:3.0f} Hz  gain {settings['gain_db']:4.1f} dB"
            f"  headroom {best['headroom_db']:5.1f} dB  {best['verdict']}"
        )
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
