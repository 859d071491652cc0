std = "lua54"
exclude_files = {"build*", "node_modules"}
