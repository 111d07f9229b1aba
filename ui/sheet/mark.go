package sheet

import (
	"crypto/sha256"
	"encoding/hex"
	"strings"

	"washeve/model/pattern"
)

// mark stands in every sheet where its seal goes.
const mark = "washeve sheet " + unsealed

const unsealed = "000000000000"

var sealPattern = pattern.Of(`washeve sheet ([0-9a-f]{12})`)

// Seal puts a check over the whole of a sheet into its mark, the last one in it.
func Seal(sheet string) string {
	i := strings.LastIndex(sheet, mark)
	if i < 0 {
		return sheet
	}
	at := i + len(mark) - len(unsealed)
	return sheet[:at] + check(sheet) + sheet[at+len(unsealed):]
}

// Sealed tells whether data is a sheet just as it was written: nobody has put
// anything into it since.
func Sealed(data []byte) bool {
	found := sealPattern().FindAllSubmatchIndex(data, -1)
	if len(found) == 0 {
		return false
	}
	from, to := found[len(found)-1][2], found[len(found)-1][3]
	bare := string(data[:from]) + unsealed + string(data[to:])
	return check(bare) == string(data[from:to])
}

func check(sheet string) string {
	sum := sha256.Sum256([]byte(sheet))
	return hex.EncodeToString(sum[:len(unsealed)/2])
}
