#!/usr/bin/env python3
"""Books the demo session's kit: asks, holds, is told of a shortage, takes a substitute, confirms.

    STANDOFF_TOKEN=... booking_client.py [REFERENCE]

The token is a booker's. REFERENCE is the desk's own name for the booking; a booking that stands under it is
told and left alone, so the client may be run again after anything that went wrong. Standard library only;
the address of the service stands in STANDOFF_URL, or is the usual one.
"""

import json
import sys
import uuid

import standoff

HOUSE = "ostrel-hire"
FROM, TO = "2027-06-11T10:00:00+02:00", "2027-06-14T11:00:00+02:00"
WANTED = [
    {"microphone": "boathouse/sdc-omni-1", "quantity": 2, "matched": True},
    {"microphone": "boathouse/ldc-multi-1", "quantity": 2},
    {"microphone": "boathouse/clip-sup-1", "quantity": 2},
]

# others book too: what is free now may be gone in a moment
MOST_CHANGES = 3


def ask_what_is_free(service):
    question = {"from": FROM, "to": TO, "houses": [HOUSE], "lines": WANTED}
    answer = service.must("POST", "/v1/availability", question).body
    for line in answer["lines"]:
        here = line["houses"][0]
        later = here.get("next_free") or {}
        print(
            f"{line['quantity']} x {line['microphone']}: "
            + ("free" if here["enough"] else f"short, {here['free_count']} free")
            + (f", again from {later['from']}" if later else "")
        )


def key(wish):
    """The same wish has the same key, however often and from wherever it is sent."""
    return str(uuid.uuid5(uuid.NAMESPACE_URL, json.dumps(wish, sort_keys=True)))


def hold(service, reference, lines):
    wish = {
        "reference": reference,
        "from": FROM,
        "to": TO,
        "lines": [{"house": HOUSE, **line} for line in lines],
    }
    return service.ask("POST", "/v1/holds", wish, Idempotency_Key=key(wish))


def with_substitutes(lines, shortfalls):
    """The lines with the best substitute that there is enough of in the place of what is short."""
    changed = list(lines)
    for short in shortfalls:
        at = int(short["pointer"].rsplit("/", 1)[1])
        enough = [s for s in short["substitutes"] if s["free_count"] >= short["quantity"]]
        if not enough:
            sys.exit(f"nothing can stand in for {short['microphone']}")
        best = enough[0]
        print(f"instead of {short['quantity']} x {short['microphone']}: {best['microphone']}")
        for loss in best["loses"]:
            print(f"  {loss}")
        changed[at] = {
            "microphone": best["microphone"],
            "quantity": short["quantity"],
            "matched": short["matched"] and best["matched"],
        }
    return changed


def main():
    reference = sys.argv[1] if len(sys.argv) > 1 else "saltlight-2027-06"
    service = standoff.Service()
    ask_what_is_free(service)
    lines = WANTED
    answer = hold(service, reference, lines)
    for _ in range(MOST_CHANGES):
        if answer.status != 409 or "shortfalls" not in answer.body:
            break
        print(f"refused: {answer.body['detail']}")
        lines = with_substitutes(lines, answer.body["shortfalls"])
        answer = hold(service, reference, lines)
    if answer.status == 409 and "hold" in answer.body:
        answer = service.must("GET", answer.body["hold"])
    elif answer.status != 201:
        standoff.give_up(answer)
    booked = service.must("GET", "/v1/holds/" + answer.body["id"])
    print(f"held as {reference}: {booked.body['state']}")
    if booked.body["state"] == "tentative":
        step = f"/v1/holds/{booked.body['id']}/confirm"
        booked = service.must("POST", step, If_Match=booked.etag)
        print(f"confirmed: {booked.body['state']}")
    for line in booked.body["lines"]:
        print(f"  {line['microphone']}: " + ", ".join(unit["serial"] for unit in line["units"]))
    for owed in service.must("GET", f"/v1/holds/{booked.body['id']}/charge").body["houses"]:
        print(f"owed to {owed['house']}: {owed['owed_minor']} minor units of {owed['currency']}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
