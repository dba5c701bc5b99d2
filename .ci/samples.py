"""Runs the calls that the page for people shows, in each of their languages, against a running service.

    samples.py    the address stands in STANDOFF_URL

Not those that need a token, and not what asks for a rental house: the houses and holds of the description's
examples are not there. Exits 1 where a call fails, and shows it.
"""

import html
import os
import re
import subprocess
import sys
import urllib.request

PROGRAMS = {"Shell": "bash", "Python": "python3", "Lua": "lua5.4"}
SAMPLE = re.compile(r"<p>(Shell|Python|Lua)</p><pre><code>(.*?)</code></pre>", re.DOTALL)
LEFT = re.compile(r"STANDOFF_TOKEN|/v1/(houses|availability)")

service = os.environ["STANDOFF_URL"]
with urllib.request.urlopen(service + "/docs") as page:
    samples = SAMPLE.findall(page.read().decode())

runs = dict.fromkeys(PROGRAMS, 0)
failed = 0
for language, escaped in samples:
    code = html.unescape(escaped).replace("http://127.0.0.1:8080", service)
    if LEFT.search(code):
        continue
    run = subprocess.run([PROGRAMS[language], "-"], input=code, capture_output=True, text=True)
    runs[language] += 1
    if run.returncode or not run.stdout.strip():
        failed += 1
        print(code, run.stdout, run.stderr, sep="\n", file=sys.stderr)

print(", ".join(f"{language} {count}" for language, count in runs.items()), f"calls, {failed} failed")
sys.exit(1 if failed or not all(runs.values()) else 0)
