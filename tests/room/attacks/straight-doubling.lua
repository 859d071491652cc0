-- Tries: to double a text in straight code, where no hook looks.
-- Expects: open rule-memory says the rule makes a text, a table or a depth of calls that is too large
return {
  title = "Attack", cite = "Trial", about = "roof_plane",
  check = function(thing, book, design)
    local text = "0123456789abcdef"
    text = text .. text .. text .. text .. text .. text .. text .. text
    text = text .. text .. text .. text .. text .. text .. text .. text
    text = text .. text .. text .. text .. text .. text .. text .. text
    text = text .. text .. text .. text .. text .. text .. text .. text -- here
    shall.be("Come to", same(text, text))
  end,
}
