_T = {c: 0x2400 + c for c in range(32) if c not in (9, 10)} | {127: 0x2421} | {c: "\ufffd" for c in range(0x80, 0xa0)}
for _c in [0x61c, 0x200b, 0x200e, 0x200f, *range(0x2028, 0x202f), *range(0x2060, 0x206a), 0xfeff, *range(0xd800,0xe000)]:
    _T[_c] = f"<{_c:04x}>"
def show(s): return s.translate(_T)
