-- Asks settings in one line, as a script inside a workstation would: a bare socket, no JSON.
--   lua5.4 settings.lua [ADDRESS]
-- The address may stand in STANDOFF_URL too. Needs LuaSocket. Exits 1 where the service refuses.
local socket = require("socket")

local address = arg[1] or os.getenv("STANDOFF_URL") or "http://127.0.0.1:8080"
local host, port = address:match("^http://([^:/]+):?(%d*)")
assert(host, "an address is http://host:port")
port = tonumber(port) or 80
local question = "source=core/guitar-amp&distance_m=0.05&microphone=core/dyn-card-1&preamp=core/preamp-16"

local connection = assert(socket.connect(host, port))
connection:settimeout(30)
assert(connection:send(
  "GET /v1/settings?" .. question .. " HTTP/1.1\r\n"
    .. "Host: " .. host .. "\r\nAccept: text/plain\r\nConnection: close\r\n\r\n"))

local status = assert(connection:receive("*l"))
local length
for header in function() return connection:receive("*l") end do
  if header == "" then break end
  length = length or tonumber(header:lower():match("^content%-length: (%d+)"))
end
local body = assert(connection:receive(assert(length, "no length")))
connection:close()

if not status:find(" 200 ", 1, true) then
  io.stderr:write(status, "\n", body, "\n")
  os.exit(1)
end

local settings = {}
for name, value in body:gmatch("([%w_]+)=(%S+)") do
  settings[name] = value
end
assert(settings.gain_db, "no gain in the answer")
print(("%s, pad %s dB, high-pass %s Hz, gain %s dB: %s"):format(
  settings.pattern, settings.pad_db, settings.high_pass_hz, settings.gain_db, settings.verdict))
