"""What the other Python examples share: one way to ask Standoff. Standard library only."""

import json
import os
import sys
import time
import urllib.error
import urllib.request

TIMEOUT_S = 60
COME_AGAIN = (429, 503)
MOST_ATTEMPTS = 20


class Answer:
    """Status, headers and body of an answer, a refusal among them."""

    def __init__(self, status, headers, body):
        self.status = status
        self.etag = headers.get("ETag")
        self.retry_after_s = int(headers.get("Retry-After", 1))
        self.type = headers.get("Content-Type", "")
        self.body = json.loads(body) if "json" in self.type else body


class Service:
    """Standoff at STANDOFF_URL, asked with the bearer token in STANDOFF_TOKEN."""

    def __init__(self):
        self.url = os.environ.get("STANDOFF_URL", "http://127.0.0.1:8080").rstrip("/")
        self.token = os.environ.get("STANDOFF_TOKEN")

    def ask(self, method, path, body=None, **headers):
        """Sends a JSON value, or a sheet given as bytes; header names have underscores for hyphens.

        Where the answer is to come again, it does, when the answer says. Every request here may be sent twice:
        a change names the state that it changes, or has its Idempotency-Key.
        """
        sent = {name.replace("_", "-"): value for name, value in headers.items() if value}
        sent.setdefault("Accept", "application/json")
        if self.token:
            sent["Authorization"] = "Bearer " + self.token
        if isinstance(body, bytes):
            sent["Content-Type"] = "text/csv"
        elif body is not None:
            sent["Content-Type"] = "application/json"
            body = json.dumps(body).encode()
        request = urllib.request.Request(self.url + path, body, sent, method=method)
        for _ in range(MOST_ATTEMPTS):
            answer = self._send(request)
            if answer.status not in COME_AGAIN:
                break
            time.sleep(answer.retry_after_s)
        return answer

    @staticmethod
    def _send(request):
        try:
            with urllib.request.urlopen(request, timeout=TIMEOUT_S) as response:
                return Answer(response.status, response.headers, response.read().decode())
        except urllib.error.HTTPError as refusal:
            return Answer(refusal.code, refusal.headers, refusal.read().decode())

    def must(self, method, path, body=None, **headers):
        """The same where nothing but success makes sense."""
        answer = self.ask(method, path, body, **headers)
        if answer.status >= 300:
            give_up(answer)
        return answer


def give_up(answer):
    """Ends with the service's words about every fault."""
    if not isinstance(answer.body, dict):
        sys.exit(f"{answer.status}: {answer.body}")
    lines = [f"{answer.status}: {answer.body.get('detail', answer.body.get('title'))}"]
    for fault in answer.body.get("errors", []):
        place = fault.get("pointer") or fault.get("parameter") or ""
        if "row" in fault:
            place = f"row {fault['row']}, {fault.get('field', 'whole row')}"
        lines.append(f"  {place}: {fault['detail']} (found: {fault.get('found')})")
    sys.exit("\n".join(lines))
